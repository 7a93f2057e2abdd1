package org.shelterwright.layouts.ledger.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.item.Battery;
import org.shelterwright.catalog.item.Converter;
import org.shelterwright.catalog.item.Current;
import org.shelterwright.catalog.item.Generator.Derating;
import org.shelterwright.layouts.brief.Feed;
import org.shelterwright.layouts.brief.Supply;
import org.shelterwright.layouts.brief.Supply.Kind;
import org.shelterwright.layouts.brief.Weather;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.power.TestNet;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.trial.TrialItem;

class SourceLimitsTest {
    private static final Derating COMMON = new Derating(1000, 0.006, 40, 0.006);

    private static Supply mains() {
        return TestNet.supply("mains", Kind.GENERATOR, Current.AC, 230, null, 40.0, "engine", List.of(), null);
    }

    private static Weather air(double outsideC) {
        return new Weather(outsideC, 15, 25, 0, 0, 0);
    }

    /** 3 % for each 500 m above 1000 m and for each 5 K above 40 °C, as printed for generators: 0.97, 0.94, 0.91. */
    @Test
    void deratingAgreesWithThePrintedTable() {
        assertThat(COMMON.share(1500, 25)).isCloseTo(0.97, within(1e-12));
        assertThat(COMMON.share(2500, 25)).isCloseTo(0.91, within(1e-12));
        assertThat(COMMON.share(0, 50)).isCloseTo(0.94, within(1e-12));
        assertThat(COMMON.share(1500, 45)).isCloseTo(0.97 * 0.97, within(1e-12));
    }

    @Test
    void aGeneratorIsDeratedAndKeepsItsReserve() {
        TestNet test = new TestNet()
                .limit(Figure.GENERATOR_RESERVE, 0.2)
                .altitude(1500)
                .supply(mains())
                .plant("engine", TestNet.generator(8000, 8000, COMMON))
                .load("rack", TestNet.ac(6000, 1.0))
                .state("day", null, air(45), "mains");

        Row row = test.row(new GeneratorSize());

        assertThat(row.capacity()).isCloseTo(8000 * 0.97 * 0.97 * 0.8, within(1e-9));
        assertThat(row.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(row.finding())
                .isEqualTo("The generator of Mains (8000 VA, 94.1 % left at this altitude and heat, 20 % reserve) gives"
                        + " 6000 VA of 6022 VA: 22 VA are left.");
    }

    @Test
    void withoutAltitudeOrAirAGeneratorIsNotAssessed() {
        TestNet test = new TestNet()
                .supply(mains())
                .plant("engine", TestNet.generator(8000, 8000, COMMON))
                .load("rack", TestNet.ac(6000, 1.0))
                .state("day", null, null, "mains");

        Row row = test.row(new GeneratorSize());

        assertThat(row.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row.finding())
                .isEqualTo(
                        "The air temperature by day is not stated. Give the weather of that state. (and 1 gap more)");
    }

    @Test
    void aBatteryLastsByPeukertsLaw() {
        // given 240 W at 24 V from 100 Ah at 20 h with k = 1.2, half of it usable: 8.706 h / 2
        Row row = battery(240, 4.0).row(new BatteryEndurance());

        assertThat(row.capacity()).isCloseTo(4.353, within(0.0005));
        assertThat(row.demand()).isEqualTo(4.0);
        assertThat(row.finding())
                .isEqualTo("Battery gives 10 A for 4.35 h, and must for 4 h: 0.35 h more than needed.");
    }

    @Test
    void aBatteryThatIsTooSmallIsBrokenAndItsMendHolds() {
        Row row = battery(240, 6.0).row(new BatteryEndurance());

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.mend()).isEqualTo("State what is idle or off by night, or choose a battery with about 131 Ah.");
        assertThat(battery(240, 6.0, 131).row(new BatteryEndurance()).verdict()).isEqualTo(Verdict.CLOSE);
    }

    @Test
    void withoutHoursABatteryIsNotAssessed() {
        Row row = battery(240, null).row(new BatteryEndurance());

        assertThat(row.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row.finding())
                .isEqualTo("How long the battery of Battery must last by night is not stated. Give the hours of that"
                        + " state.");
    }

    @Test
    void whatWasTakenOutComesBackWithTheCurrentThatIsLeft() {
        // given 4 h at 10 A taken out, and 30 A of a charger that also bears 10 A of loads: 20 A are left
        Row row = battery(240, 4.0)
                .limit(Figure.CHARGE_FACTOR, 1.2)
                .limit(Figure.CHARGE_HOURS, 3)
                .row(new ChargeTime());

        assertThat(row.demand()).isCloseTo(1.2 * 40 / 20, within(1e-9));
        assertThat(row.finding())
                .isEqualTo("Charged with 20 A, Battery has its 40 Ah back after 2.4 h of 3 h: 0.6 h are left.");
    }

    @Test
    void chargingLoadsTheSupplyThatFeedsTheCharger() {
        // given a charger at 30 A and 28.8 V with an efficiency of 0.9
        TestNet test = battery(240, 4.0);

        double watts = test.net().flows().get(0).flow(TestNet.shore(null, null)).totalW();

        assertThat(watts).isCloseTo(28.8 * 30 / 0.9, within(1e-9));
    }

    /** k = 1: the capacity does not depend on the current, so that 100 Ah, half of them usable, last 5 h at 10 A. */
    @Test
    void aBatteryThatLastsExactlyAsLongAsItMustIsCloseAndNeedsNoMend() {
        Battery steady = new Battery(24, 100, 20, 1, 0.5, 400.0, 25.0, 28.8);
        Row exact = battery(240, 5.0, steady).row(new BatteryEndurance());
        Row aged = battery(240, 5.0, steady).limit(Figure.BATTERY_AGEING, 0.8).row(new BatteryEndurance());

        assertThat(exact.capacity()).isEqualTo(5.0);
        assertThat(exact.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(exact.mend()).isNull();
        assertThat(exact.finding()).endsWith("must for 5 h: 0 h more than needed.");
        assertThat(aged.capacity()).isCloseTo(4.0, within(1e-12));
        assertThat(aged.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(aged.finding()).endsWith("must for 5 h: 1 h too little.");
        assertThat(aged.mend()).endsWith("a battery with about 125 Ah.");
    }

    /** Below the rated current the capacity is what counts: 1 A for 100 h out of half of it takes 200 Ah, whatever the exponent. */
    @Test
    void theMendOfABatteryThatDischargesSlowlyHolds() {
        Row row = battery(24, 100.0).row(new BatteryEndurance());

        assertThat(row.capacity()).isCloseTo(50.0, within(1e-12));
        assertThat(row.mend()).endsWith("a battery with about 200 Ah.");
        assertThat(battery(24, 100.0, 200).row(new BatteryEndurance()).verdict())
                .isEqualTo(Verdict.CLOSE);
    }

    @Test
    void theStateThatAsksMostOfABatteryGoverns() {
        TestNet shortLast = battery(240, 4.0).state("dusk", 2.0, null, "battery");
        TestNet longLast = battery(240, 2.0).state("dusk", 4.0, null, "battery");

        assertThat(shortLast.row(new BatteryEndurance()).state()).isEqualTo("by night");
        assertThat(longLast.row(new BatteryEndurance()).state()).isEqualTo("by dusk");
    }

    @Test
    void aBatteryOnWhichNothingDrawsHolds() {
        Row row = battery(240, 4.0).feed(offByNight()).row(new BatteryEndurance());

        assertThat(row.verdict()).isEqualTo(Verdict.MET);
        assertThat(row.finding()).isEqualTo("Nothing draws on Battery while nothing charges it.");
        assertThat(row.units()).containsExactly("box");
    }

    @Test
    void aBatteryOfWhichSomeLoadIsNotKnownIsNotAssessed() {
        TestNet test = battery(240, 4.0)
                .limit(Figure.CHARGE_HOURS, 3)
                .item("desk", TrialItem.of("desk", 100, 100, 100).powerPort());

        assertThat(test.row(new BatteryEndurance()).verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(test.row(new BatteryEndurance()).finding()).startsWith("Desk has a port for power");
        assertThat(test.row(new ChargeTime()).verdict()).isEqualTo(Verdict.NOT_ASSESSED);
    }

    @Test
    void aSupplyWithoutItsBatteryIsNotAssessed() {
        TestNet test = new TestNet()
                .supply(TestNet.supply("battery", Kind.BATTERY, Current.DC, 24, null, 60.0, null, List.of(), null))
                .load("radio", TestNet.dc(24))
                .state("night", 4.0, null, "battery");

        Row row = test.row(new BatteryEndurance());

        assertThat(row.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row.finding())
                .isEqualTo("The supply Battery names no unit with a battery. Give its source in the brief, and"
                        + " \"plant\" in the item of that unit.");
    }

    @Test
    void aChargeThatTakesExactlyAsLongAsItMayIsCloseAndNeedsNoMend() {
        Row exact = battery(240, 4.0).limit(Figure.CHARGE_HOURS, 2).row(new ChargeTime());
        Row tooLong = battery(240, 4.0).limit(Figure.CHARGE_HOURS, 1.9).row(new ChargeTime());

        assertThat(exact.demand()).isEqualTo(2.0);
        assertThat(exact.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(exact.mend()).isNull();
        assertThat(tooLong.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(tooLong.mend()).isEqualTo("Choose a charger with more current, or switch loads off.");
        assertThat(tooLong.units()).containsExactly("box");
    }

    @Test
    void loadsThatTakeAllOfTheChargerLeaveTheBatteryEmpty() {
        // given 30 A of loads on a charger of 30 A
        Row row = battery(720, 1.0).limit(Figure.CHARGE_HOURS, 12).row(new ChargeTime());

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.finding())
                .startsWith("The loads of Battery leave no current to charge it; it is full after 1000 h of 12 h");
    }

    @Test
    void withoutAStateThatChargesNothingComesBack() {
        TestNet test = boxed(240, new Battery(24, 100, 20, 1.2, 0.5, 400.0, 25.0, 28.8))
                .limit(Figure.CHARGE_HOURS, 3)
                .state("night", 4.0, null, "battery");

        Row row = test.row(new ChargeTime());

        assertThat(row.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row.finding())
                .isEqualTo("No state charges Battery. State from which supply it is charged (fedFrom, charger), and a"
                        + " state in which that is live.");
    }

    @Test
    void nothingTakenOutNeedsNoCharge() {
        TestNet test = boxed(240, new Battery(24, 100, 20, 1.2, 0.5, 400.0, 25.0, 28.8))
                .feed(offByNight())
                .limit(Figure.CHARGE_HOURS, 3)
                .state("night", 4.0, null, "battery");

        assertThat(test.row(new ChargeTime()).verdict()).isEqualTo(Verdict.MET);
        assertThat(test.row(new ChargeTime()).finding()).isEqualTo("Nothing is taken out of Battery.");
    }

    @Test
    void whatAChargeNeedsToBeJudgedIsNamed() {
        Row figure = battery(240, 4.0).row(new ChargeTime());
        Row hours = battery(240, null).limit(Figure.CHARGE_HOURS, 3).row(new ChargeTime());

        assertThat(figure.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(figure.finding()).startsWith("No value is set for ").contains(Figure.CHARGE_HOURS.id());
        assertThat(hours.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(hours.finding())
                .isEqualTo("How long nothing charges Battery by night is not stated. Give the hours of that state.");
    }

    @Test
    void theEngineGovernsWhereItIsWeakerThanTheAlternator() {
        // given 8000 VA but 6000 W, and loads with a power factor of 1
        Row exact = engine(6000, 6000.0).row(new GeneratorSize());
        Row over = engine(6001, 6000.0).row(new GeneratorSize());

        assertThat(exact.unit()).isEqualTo("W");
        assertThat(exact.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(exact.mend()).isNull();
        assertThat(exact.units()).containsExactly("engine");
        assertThat(over.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(over.finding())
                .isEqualTo("The generator of Mains (6000 W, 100 % left at this altitude and heat, 0 % reserve) gives"
                        + " 6001 W of 6000 W: 1 W too much.");
        assertThat(over.mend())
                .isEqualTo("Choose a larger generator, or state what is off while something else is on.");
    }

    @Test
    void theAlternatorGovernsWhereLoadsTakeReactivePower() {
        // given 4000 W at a power factor of 0.8: 5000 VA of 8000, and 4000 W of 8000
        Row row = engine(4000, 8000.0).limit(Figure.POWER_FACTOR, 0.8).row(new GeneratorSize());

        assertThat(row.unit()).isEqualTo("VA");
        assertThat(row.demand()).isCloseTo(5000, within(1e-9));
        assertThat(row.nominal()).isCloseTo(4000, within(1e-9));
    }

    private static TestNet engine(double watts, double ratedW) {
        return new TestNet()
                .altitude(0)
                .supply(mains())
                .plant("engine", TestNet.generator(8000, ratedW, COMMON))
                .load("rack", TestNet.ac(watts, 1.0))
                .state("day", null, air(20), "mains");
    }

    @Test
    void aGeneratorThatIsNotKnownOrNeverLiveIsSaidToBe() {
        Row unknown =
                new TestNet().supply(mains()).load("rack", TestNet.ac(100, 1.0)).row(new GeneratorSize());
        Row resting = new TestNet()
                .supply(mains())
                .plant("engine", TestNet.generator(8000, 8000, COMMON))
                .load("rack", TestNet.ac(100, 1.0))
                .state("day", null, null)
                .row(new GeneratorSize());
        Row curve = new TestNet()
                .altitude(0)
                .supply(mains())
                .plant("engine", TestNet.generator(8000, 8000, null))
                .load("rack", TestNet.ac(100, 1.0))
                .state("day", null, air(20), "mains")
                .row(new GeneratorSize());

        assertThat(unknown.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(unknown.finding())
                .isEqualTo("The supply Mains names no unit with a generator. Give its source in the brief, and"
                        + " \"plant\" in the item of that unit.");
        assertThat(resting.verdict()).isEqualTo(Verdict.MET);
        assertThat(resting.finding()).isEqualTo("Mains is not live in any state.");
        assertThat(curve.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(curve.finding())
                .isEqualTo("How the generator of Mains loses power when high up or hot is not known. Give derating in"
                        + " its item.");
    }

    private static Feed offByNight() {
        return new Feed("radio", "battery", null, List.of(), List.of("night"), List.of());
    }

    private static TestNet battery(double watts, @Nullable Double hours) {
        return battery(watts, hours, 100);
    }

    private static TestNet battery(double watts, @Nullable Double hours, double capacityAh) {
        return battery(watts, hours, new Battery(24, capacityAh, 20, 1.2, 0.5, 400.0, 25.0, 28.8));
    }

    private static TestNet battery(double watts, @Nullable Double hours, Battery battery) {
        return boxed(watts, battery)
                .state("day", null, null, "mains", "battery")
                .state("night", hours, null, "battery");
    }

    private static TestNet boxed(double watts, Battery battery) {
        return new TestNet()
                .supply(TestNet.shore(null, 16.0))
                .supply(TestNet.supply(
                        "battery", Kind.BATTERY, Current.DC, 24, null, 60.0, "box", List.of("mains"), "charger"))
                .plant("box", TestNet.battery(battery))
                .plant("charger", TestNet.converter(new Converter(null, null, null, 30.0, 0.9, 0)))
                .load("radio", TestNet.dc(watts));
    }
}

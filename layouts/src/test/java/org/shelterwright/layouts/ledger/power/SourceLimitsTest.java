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
import org.shelterwright.layouts.brief.Supply;
import org.shelterwright.layouts.brief.Supply.Kind;
import org.shelterwright.layouts.brief.Weather;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.power.TestNet;
import org.shelterwright.layouts.rules.Figure;

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

    private static TestNet battery(double watts, @Nullable Double hours) {
        return battery(watts, hours, 100);
    }

    private static TestNet battery(double watts, @Nullable Double hours, double capacityAh) {
        return new TestNet()
                .supply(TestNet.shore(null, 16.0))
                .supply(TestNet.supply(
                        "battery", Kind.BATTERY, Current.DC, 24, null, 60.0, "box", List.of("mains"), "charger"))
                .plant("box", TestNet.battery(new Battery(24, capacityAh, 20, 1.2, 0.5, 400.0, 25.0, 28.8)))
                .plant("charger", TestNet.converter(new Converter(null, null, null, 30.0, 0.9, 0)))
                .load("radio", TestNet.dc(watts))
                .state("day", null, null, "mains", "battery")
                .state("night", hours, null, "battery");
    }
}

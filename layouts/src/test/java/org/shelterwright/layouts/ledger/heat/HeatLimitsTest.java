package org.shelterwright.layouts.ledger.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.body.Insulation;
import org.shelterwright.catalog.item.AirHandling;
import org.shelterwright.catalog.item.Converter;
import org.shelterwright.catalog.item.Current;
import org.shelterwright.catalog.item.Plant;
import org.shelterwright.layouts.brief.Activity;
import org.shelterwright.layouts.brief.Supply.Kind;
import org.shelterwright.layouts.brief.Weather;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.power.TestNet;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.trial.TrialBody;
import org.shelterwright.layouts.trial.TrialItem;

class HeatLimitsTest {
    /** Outside 4.1 x 2.1 x 2.1 m with U = 1 all over: 43.26 m², 43.26 W/K. */
    private static final double UA = 2 * (4.1 + 2.1) * 2.1 + 2 * 4.1 * 2.1;

    private static final Weather HOT = new Weather(35, 18, 27, 0, 0, 0);
    private static final Weather COLD = new Weather(-20, 18, 27, 0, 0, 0);

    private static TestNet room(@Nullable Double coolingW, @Nullable Double heatingW) {
        return room(0, coolingW, heatingW);
    }

    private static TestNet room(double absorptance, @Nullable Double coolingW, @Nullable Double heatingW) {
        Insulation insulation = new Insulation(1, 1, 1, 1, absorptance, 0);
        AirHandling air = new AirHandling(coolingW, coolingW == null ? null : 35.0, 0.02, heatingW, 60.0, null);
        return new TestNet(TrialBody.of(4000, 2000, 2000).insulation(insulation))
                .limit(Figure.FRESH_AIR, 30)
                .supply(TestNet.shore(null, 16.0))
                .load("rack", TestNet.ac(1000, 1.0))
                .plant("cooler", new Plant(null, null, null, air));
    }

    @Test
    void coolingTakesOutEquipmentPeopleWallsAndAir() {
        // given 1000 W of equipment, two people of 130 W, walls at 8 K, and 60 m³/h of air at 8 K
        TestNet test = room(1800.0, null).state("day", 2, Activity.OFFICE_WORK, null, HOT, "mains");

        Row row = test.row(new Cooling());

        double air = 60 * 1.2 * 1005 / 3600 * 8;
        assertThat(row.demand()).isCloseTo(1000 + 260 + UA * 8 + air, within(1e-9));
        assertThat(row.capacity()).isEqualTo(1800.0);
        assertThat(row.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(row.units()).containsExactly("cooler");
        assertThat(row.finding())
                .isEqualTo(
                        "The room must be cooled by 1767 W by day (equipment 1000 W, people 260 W, walls and sun 346 W,"
                                + " air 161 W), and 1800 W is installed and on: 33 W more than needed.");
    }

    @Test
    void tooLittleCoolingIsBrokenAndItsMendHolds() {
        Row row = room(1700.0, null)
                .state("day", 2, Activity.OFFICE_WORK, null, HOT, "mains")
                .row(new Cooling());

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.mend())
                .isEqualTo("Add cooling of at least 67 W, state what is idle or off then, or keep the sun off.");
        assertThat(room(1767.0, null)
                        .state("day", 2, Activity.OFFICE_WORK, null, HOT, "mains")
                        .row(new Cooling())
                        .verdict())
                .isEqualTo(Verdict.CLOSE);
    }

    @Test
    void aCoolerGivesLessWhenItIsHotterThanItsRating() {
        Weather hotter = new Weather(40, 18, 27, 0, 0, 0);
        Row row = room(3000.0, null).state("day", null, hotter, "mains").row(new Cooling());

        assertThat(row.capacity()).isCloseTo(3000 * (1 - 0.02 * 5), within(1e-9));
    }

    @Test
    void moistureOfTheAirCountsToo() {
        Weather damp = new Weather(27, 18, 27, 0, 0, 5);
        Row row = room(3000.0, null)
                .state("day", 1, Activity.SEATED_VERY_LIGHT, null, damp, "mains")
                .row(new Cooling());

        assertThat(row.demand()).isCloseTo(1000 + 115 + 30 * 1.2 * 2501 / 3600 * 5, within(1e-9));
    }

    @Test
    void outsideAirCoolsWhereItIsCoolerUpToWhatIsBroughtIn() {
        // given 1000 W inside, walls at 7 K, and up to 60 m³/h of air at 7 K
        Weather mild = new Weather(20, 18, 27, 0, 0, 0);
        Row row = room(3000.0, null).state("day", null, mild, "mains").row(new Cooling());

        assertThat(row.demand()).isCloseTo(1000 - UA * 7 - 60 * 1.2 * 1005 / 3600 * 7, within(1e-9));
    }

    @Test
    void heatingMakesUpForWallsAndAirWithoutAnyGains() {
        TestNet test = room(null, 2000.0).state("night", 1, Activity.OFFICE_WORK, null, COLD, "mains");

        Row row = test.row(new Heating());

        assertThat(row.demand()).isCloseTo(UA * 38 + 30 * 1.2 * 1005 / 3600 * 38, within(1e-9));
        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.mend()).isEqualTo("Add heating of at least 26 W, or insulate the body better.");
    }

    @Test
    void peopleNeedFreshAir() {
        TestNet two = room(null, null).state("day", 2, Activity.OFFICE_WORK, null, HOT, "mains");
        TestNet three = room(null, null).state("day", 3, Activity.OFFICE_WORK, null, HOT, "mains");

        assertThat(two.row(new FreshAir()).verdict()).isEqualTo(Verdict.CLOSE);
        Row row = three.row(new FreshAir());
        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.finding())
                .isEqualTo(
                        "The people inside need 90 m³/h by day (3 people), and 60 m³/h is installed and on: 30 m³/h too"
                                + " little.");
    }

    @Test
    void missingDataAreNamed() {
        Row body = new TestNet()
                .supply(TestNet.shore(null, 16.0))
                .state("day", null, HOT, "mains")
                .row(new Cooling());
        Row weather = room(100.0, null).row(new Cooling());
        Row figure = new TestNet(TrialBody.of(4000, 2000, 2000).insulation(new Insulation(1, 1, 1, 1, 0, 0)))
                .state("day", 1, Activity.OFFICE_WORK, null, HOT)
                .row(new FreshAir());

        assertThat(body.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(body.finding())
                .isEqualTo(
                        "How heat passes through the body Trial body is not known. Give insulation in body trial-body.");
        assertThat(weather.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(weather.finding())
                .isEqualTo("The brief states no operating state with its weather. Give states and their weather in its"
                        + " services.");
        assertThat(figure.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(figure.finding()).startsWith("How much fresh air a person needs is not set.");
    }

    /**
     * By hand: equipment 1000 + 400 W, and an inverter of 80 % that takes 400/0.8 + 20 W; one person 115 W; walls 43.26 m² at 8 K;
     * sun of 34/17 % at 1000 W/m² less 4 K on 8.61 m² of roof and at 500 W/m² on 26.04 m² of walls; 30 m³/h at 8 K, 0.335 W each,
     * and at 5 g/kg, 0.8337 W each.
     */
    @Test
    void everyKindOfHeatAddsToTheCoolingThatIsNeeded() {
        Weather sunny = new Weather(35, 18, 27, 1000, 500, 5);
        TestNet test = room(0.34, 3000.0, null)
                .supply(TestNet.supply(
                        "inverter", Kind.CONVERTER, Current.AC, 230, null, 13.0, "box", List.of("mains"), null))
                .plant("box", TestNet.converter(new Converter(1000.0, null, null, null, 0.8, 20)))
                .load("rig", TestNet.ac(400, 1.0))
                .feed("rig", "inverter", null)
                .feed("rack", "mains", null)
                .state("day", 1, Activity.SEATED_VERY_LIGHT, null, sunny, "mains");

        Row row = test.row(new Cooling());

        double sun = 8.61 * 16 + 26.04 * 10;
        double air = 30 * (0.335 * 8 + 1.2 * 2501 / 3600 * 5);
        assertThat(row.demand()).isCloseTo(1520 + 115 + 43.26 * 8 + sun + air, within(1e-6));
        assertThat(row.finding())
                .startsWith("The room must be cooled by 2585 W by day (equipment 1520 W, people 115 W, walls and sun"
                        + " 744 W, air 205 W)");
    }

    @Test
    void coolingOfExactlyWhatIsNeededIsCloseAndNeedsNoMend() {
        // given as warm outside as inside: 1000 W of equipment and one person of 115 W are all
        Weather mild = new Weather(27, 18, 27, 0, 0, 0);
        Row row = room(1115.0, null)
                .state("day", 1, Activity.SEATED_VERY_LIGHT, null, mild, "mains")
                .row(new Cooling());

        assertThat(row.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(row.mend()).isNull();
        assertThat(row.finding()).endsWith("1115 W is installed and on: 0 W more than needed.");
    }

    @Test
    void theStateThatNeedsMostMakesTheRowWhereverItStands() {
        TestNet hotLast = room(3000.0, null)
                .state("morning", null, new Weather(27, 18, 27, 0, 0, 0), "mains")
                .state("noon", null, HOT, "mains");
        TestNet hotFirst = room(3000.0, null)
                .state("noon", null, HOT, "mains")
                .state("evening", null, new Weather(27, 18, 27, 0, 0, 0), "mains");

        assertThat(hotLast.row(new Cooling()).state()).isEqualTo("by noon");
        assertThat(hotFirst.row(new Cooling()).state()).isEqualTo("by noon");
    }

    @Test
    void whatIsNotKnownLeavesEnoughCoolingOpenAndTooLittleBroken() {
        Row enough = unknownLoads(1000.0).row(new Cooling());
        Row tooLittle = unknownLoads(999.0).row(new Cooling());

        assertThat(enough.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(enough.finding())
                .isEqualTo("Desk has a port for power, but item desk does not say what it draws. Give \"power\" there."
                        + " (and 1 gap more)");
        assertThat(enough.units()).containsExactly("desk", "lamp");
        assertThat(tooLittle.verdict()).isEqualTo(Verdict.BROKEN);
    }

    private static TestNet unknownLoads(double coolingW) {
        return room(coolingW, null)
                .item("desk", TrialItem.of("desk", 100, 100, 100).powerPort())
                .item("lamp", TrialItem.of("lamp", 100, 100, 100).powerPort())
                .state("day", null, new Weather(27, 18, 27, 0, 0, 0), "mains");
    }

    @Test
    void oneUnknownLoadLeavesHeatingOpen() {
        Row row = room(null, 9000.0)
                .item("desk", TrialItem.of("desk", 100, 100, 100).powerPort())
                .state("night", null, COLD, "mains")
                .row(new Heating());

        assertThat(row.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row.finding()).endsWith("Give \"power\" there.");
    }

    @Test
    void heatingSaysWhereTheHeatGoesAndWhichUnitsHeat() {
        AirHandling fan = new AirHandling(null, null, null, null, 20.0, null);
        TestNet test = room(null, 2000.0)
                .plant("fan", new Plant(null, null, null, fan))
                .state("night", 1, Activity.OFFICE_WORK, null, COLD, "mains");

        Row heating = test.row(new Heating());
        Row fresh = test.row(new FreshAir());

        assertThat(heating.units()).containsExactly("cooler");
        assertThat(heating.finding())
                .isEqualTo("The room must be heated by 2026 W by night (walls 1644 W, air 382 W), and 2000 W is"
                        + " installed and on: 26 W too little.");
        assertThat(fresh.units()).containsExactly("cooler", "fan");
        assertThat(fresh.finding())
                .isEqualTo("The people inside need 30 m³/h by night (1 person), and 80 m³/h is installed and on: 50"
                        + " m³/h more than needed.");
    }

    @Test
    void whatOnlyHeatsBringsNoFreshAir() {
        AirHandling heater = new AirHandling(null, null, null, 500.0, null, null);
        TestNet test = room(null, null)
                .plant("heater", new Plant(null, null, null, heater))
                .state("day", 3, Activity.OFFICE_WORK, null, HOT, "mains");

        Row fresh = test.row(new FreshAir());

        assertThat(fresh.units()).containsExactly("cooler");
        assertThat(fresh.mend()).isEqualTo("Bring in at least 30 m³/h more outside air, or have fewer people inside.");
        assertThat(test.row(new Heating()).units()).containsExactly("heater");
        assertThat(test.row(new Cooling()).units()).isEmpty();
    }

    @Test
    void theSubjectHoldsCoolingHeatingAndFreshAir() {
        assertThat(HeatLimits.all())
                .extracting(Limit::id)
                .containsExactly("heat.cooling", "heat.heating", "heat.fresh-air");
    }
}

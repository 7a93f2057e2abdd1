package org.shelterwright.layouts.ledger.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.body.Insulation;
import org.shelterwright.catalog.item.AirHandling;
import org.shelterwright.catalog.item.Plant;
import org.shelterwright.layouts.brief.Activity;
import org.shelterwright.layouts.brief.Weather;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.power.TestNet;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.trial.TrialBody;

class HeatLimitsTest {
    /** Outside 4.1 x 2.1 x 2.1 m with U = 1 all over: 43.26 m², 43.26 W/K. */
    private static final double UA = 2 * (4.1 + 2.1) * 2.1 + 2 * 4.1 * 2.1;

    private static final Weather HOT = new Weather(35, 18, 27, 0, 0, 0);
    private static final Weather COLD = new Weather(-20, 18, 27, 0, 0, 0);

    private static TestNet room(@Nullable Double coolingW, @Nullable Double heatingW) {
        Insulation insulation = new Insulation(1, 1, 1, 1, 0, 0);
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
}

package org.shelterwright.layouts.ledger.mass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.item.Tank;
import org.shelterwright.catalog.source.MassBasis;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.rig.Rig;
import org.shelterwright.layouts.rig.TestCarrier;
import org.shelterwright.layouts.rules.Figure;

class GrossMassTest {
    private static final Size CUBE = Size.ofMm(1000, 1000, 1000);

    @Test
    void growthCountsInTheNominalAndUncertaintyInTheWorstCase() {
        // given 500 kg estimated with 20 % growth and ± 10 % of the mass as stated, a tank of 10 to 60 kg, 300 kg of
        // tare
        MassData estimated = MassData.of(500, Point.ofMm(500, 500, 500), MassBasis.ESTIMATED);
        Tank water = new Tank("water", Point.ofMm(500, 500, 500), 10, 60);
        Rig rig = new Rig()
                .limit(Figure.GROWTH_ESTIMATED, 0.2)
                .limit(Figure.UNCERTAINTY_ESTIMATED, 0.1)
                .tare(Rig.mass(300, 2000, 1000, 1000))
                .bodyRating(1200)
                .put("sink", Rig.item("sink", CUBE, estimated, water), Rig.at(0, 0, 0), null);
        // when
        Row row = rig.row(new BodyGrossMass());
        // then
        assertThat(row.nominal()).isCloseTo(300 + 600 + 60, within(1e-9));
        assertThat(row.demand()).isCloseTo(300 + 600 + 50 + 60, within(1e-9));
        assertThat(row.capacity()).isEqualTo(1200.0);
        assertThat(row.verdict()).isEqualTo(Verdict.MET);
        assertThat(row.state()).isEqualTo("on the road, water of Sink full");
        assertThat(row.finding()).isEqualTo("The filled body weighs at most 1010 kg of 1200 kg: 190 kg are left.");
    }

    @Test
    void theItemsOwnGrowthAndUncertaintyGoBeforeThoseOfItsBasis() {
        MassData own = new MassData(100.0, Point.ORIGIN, MassBasis.WEIGHED, 0.5, 7.0, null);
        Rig rig = new Rig()
                .limit(Figure.GROWTH_WEIGHED, 0.3)
                .limit(Figure.UNCERTAINTY_WEIGHED, 0.3)
                .bodyRating(200)
                .put("box", Rig.item("box", CUBE, own), Rig.at(0, 0, 0), null);

        Row row = rig.row(new BodyGrossMass());

        assertThat(row.nominal()).isEqualTo(150.0);
        assertThat(row.demand()).isEqualTo(157.0);
    }

    @Test
    void aReserveIsHeldFree() {
        Rig rig = new Rig().limit(Figure.MASS_RESERVE, 0.1).bodyRating(1000).cube("box", 950, 0, 0, 0);

        Row row = rig.row(new BodyGrossMass());

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.capacity()).isEqualTo(900.0);
        assertThat(row.excess()).isEqualTo(50.0);
        assertThat(row.finding())
                .isEqualTo(
                        "The filled body weighs at most 950 kg of 900 kg (rating 1000 kg less 10 % reserve): 50 kg too"
                                + " much.");
        assertThat(row.mend()).isEqualTo("Take out at least 50 kg, or choose one with a higher rating.");
    }

    @Test
    void aMassThatIsNotStatedMakesTheSumNotAssessed() {
        Rig rig = new Rig()
                .bodyRating(1000)
                .cube("box", 100, 0, 0, 0)
                .put("rack", Rig.item("rack", CUBE, unknown()), Rig.at(1000, 0, 0), null);

        Row row = rig.row(new BodyGrossMass());

        assertThat(row.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row.units()).containsExactly("rack");
        assertThat(row.finding()).isEqualTo("Rack has no mass. Give massKg in item rack.");
    }

    @Test
    void whatIsTooHeavyAlreadyIsBrokenWhateverIsMissing() {
        Rig rig = new Rig()
                .bodyRating(1000)
                .cube("box", 1001, 0, 0, 0)
                .put("rack", Rig.item("rack", CUBE, unknown()), Rig.at(1000, 0, 0), null);

        assertThat(rig.row(new BodyGrossMass()).verdict()).isEqualTo(Verdict.BROKEN);
    }

    @Test
    void growthThatNoRuleStatesIsNotTakenForNone() {
        Rig rig = new Rig().without(Figure.GROWTH_WEIGHED).bodyRating(1000).cube("box", 1, 0, 0, 0);

        Row row = rig.row(new BodyGrossMass());

        assertThat(row.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row.finding())
                .isEqualTo("No rule set states mass.growth-weighed, which the mass of Test body needs. Choose a"
                        + " rule set that does, or set it in the brief.");
    }

    @Test
    void uncertaintyThatNoRuleStatesIsNotTakenForNone() {
        Rig rig = new Rig().without(Figure.UNCERTAINTY_WEIGHED).bodyRating(1000).cube("box", 1, 0, 0, 0);

        assertThat(rig.row(new BodyGrossMass()).verdict()).isEqualTo(Verdict.NOT_ASSESSED);
    }

    @Test
    void aBodyWithoutRatingIsNotAssessedButItsMassIsTold() {
        Row row = new Rig().cube("box", 120, 0, 0, 0).row(new BodyGrossMass());

        assertThat(row.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row.finding())
                .isEqualTo(
                        "The body Test body has no gross rating. Give grossRatingKg in body test-body. It weighs 120 kg"
                                + " when filled.");
    }

    @Test
    void unitsStillToPlaceAreTold() {
        Rig rig = new Rig().bodyRating(1000).toPlace("box", Rig.item("box", CUBE, Rig.mass(100, 0, 0, 0)));

        assertThat(rig.row(new BodyGrossMass()).finding())
                .isEqualTo("The filled body weighs at most 0 kg of 1000 kg: 1000 kg are left, without 1 unit still to"
                        + " place.");
    }

    @Test
    void theCarrierBearsBodyTanksCrewAndTheTrailersCoupling() {
        // given 5000 kg empty, 1000 kg body, 80 kg fuel, two people, and 300 kg 1 m before the trailer's axle
        Rig rig = new Rig()
                .tare(Rig.mass(1000, 2000, 1000, 1000))
                .carrier(TestCarrier.truck()
                        .tank("fuel tank", -1000, 0, 600, 10, 80)
                        .seat(0, 0, 1500)
                        .seat(0, 500, 1500)
                        .coupling(-5500, 500, 100.0, null, null)
                        .build())
                .crew(2)
                .trailer(TestCarrier.centreAxleTrailer().build())
                .load("box", Rig.item("box", CUBE, Rig.mass(300, 500, 500, 500)), Pose.at(Point.ofMm(500, -500, 500)));
        // when
        Row truck = rig.rows(new VehicleGrossMass()).get(0);
        Row trailer = rig.rows(new VehicleGrossMass()).get(1);
        // then 300 kg · 1 m / 3 m rest on the coupling
        assertThat(truck.title()).isEqualTo("Gross mass of Truck");
        assertThat(truck.demand()).isCloseTo(5000 + 1000 + 80 + 150 + 100, within(1e-9));
        assertThat(truck.capacity()).isEqualTo(14_000.0);
        assertThat(truck.state()).isEqualTo("on the road, fuel tank full, crew aboard, trailer on");
        assertThat(trailer.demand()).isEqualTo(800.0);
        assertThat(trailer.state()).isEqualTo("on the road, trailer on");
    }

    @Test
    void tooManyPeopleForTheSeatsIsSaid() {
        Rig rig =
                new Rig().carrier(TestCarrier.truck().seat(0, 0, 1500).build()).crew(2);

        assertThat(rig.row(new VehicleGrossMass()).finding())
                .isEqualTo("The brief has a crew of 2, but the carrier Truck has 1 seats. Give the seats in carrier"
                        + " truck.");
    }

    @Test
    void aPersonWhoseMassIsNotStatedIsNotTakenForNothing() {
        Rig rig = new Rig()
                .without(Figure.PERSON_MASS)
                .carrier(TestCarrier.truck().seat(0, 0, 1500).build())
                .crew(1);

        assertThat(rig.row(new VehicleGrossMass()).verdict()).isEqualTo(Verdict.NOT_ASSESSED);
    }

    @Test
    void withoutCarrierThereIsNothingToCarry() {
        Row row = new Rig().row(new VehicleGrossMass());

        assertThat(row.verdict()).isEqualTo(Verdict.MET);
        assertThat(row.finding()).isEqualTo("The brief names no carrier.");
    }

    private static MassData unknown() {
        return new MassData(null, null, MassBasis.SUPPLIER, null, null, null);
    }
}

package org.shelterwright.layouts.ledger.axles;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.carrier.Carrier.Kind;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.rig.Rig;
import org.shelterwright.layouts.rig.TestCarrier;
import org.shelterwright.layouts.rules.Figure;

/**
 * Loads by plain statics of a beam on two supports, moments about the rear axle: the truck has its axles at 0 and −4 m and bears
 * 3000 and 2000 kg when empty; the body begins 5 m behind the front axle.
 */
class AxleLimitsTest {
    private static final Offset<Double> EXACT = within(1e-9);
    private static final Size CUBE = Size.ofMm(1000, 1000, 1000);

    @Test
    void aMassSpreadsOverTwoAxlesAsOverTheSupportsOfABeam() {
        // given 800 kg 2.5 m behind the front axle: 800 · 1.5 / 4 = 300 on the front axle, 500 on the rear one
        Rig rig = new Rig().carrier(TestCarrier.truck().build()).cube("box", 800, 2000, 500, 0);
        // when
        List<Row> rows = rig.rows(new AxleLoad());
        // then
        Row front = find(rows, "axle 1");
        Row rear = find(rows, "axle 2");
        assertThat(front.demand()).isCloseTo(3300, EXACT);
        assertThat(front.capacity()).isEqualTo(6000.0);
        assertThat(rear.demand()).isCloseTo(2500, EXACT);
        assertThat(rear.finding()).isEqualTo("The axle 2 of Truck bears at most 2500 kg of 9000 kg: 6500 kg are left.");
        assertThat(rear.place()).isEqualTo(Box.ofMm(1000, 0, -1200, 1000, 2000, -1200));
        assertThat(rear.state()).isEqualTo("on the road");
    }

    @Test
    void massBehindTheRearAxleLiftsTheFrontOne() {
        // given 4000 kg 0.5 m behind the rear axle: −500 on the front axle
        Rig rig = new Rig().carrier(TestCarrier.truck().build()).cube("box", 4000, 0, 500, 0);

        assertThat(find(rig.rows(new AxleLoad()), "axle 1").demand()).isCloseTo(2500, EXACT);
        assertThat(find(rig.rows(new AxleLoad()), "axle 2").demand()).isCloseTo(6500, EXACT);
    }

    @Test
    void anAxleThatBearsTooMuchSaysByHowMuchAndWhichWayToMove() {
        Rig rig = new Rig()
                .carrier(TestCarrier.of(Kind.TRUCK)
                        .bodyAt(-5000, -1000, 1200)
                        .axle(0, 2000, 3000, 3200.0, 1)
                        .axle(-4000, 2000, 2000, null, 2)
                        .build())
                .cube("box", 800, 2000, 500, 0);

        List<Row> rows = rig.rows(new AxleLoad());
        Row front = find(rows, "axle 1");

        assertThat(front.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(front.finding()).isEqualTo("The axle 1 of Truck bears at most 3300 kg of 3200 kg: 100 kg too much.");
        assertThat(front.mend()).isEqualTo("Move mass to the rear: Box alone would do it with 500 mm.");
        assertThat(find(rows, "axle 2").verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(find(rows, "axle 2").finding())
                .isEqualTo("The axle 2 of Truck has no rating. Give ratingKg in carrier truck.");
    }

    @Test
    void wheelsOfASideBearWhatStandsNearThem() {
        // given 800 kg half a metre left of the middle plane on a track of 2 m: a quarter of the track, so 3/4 on the
        // left
        Rig rig = new Rig().carrier(TestCarrier.truck().build()).cube("box", 800, 2000, 1000, 0);

        List<Row> rows = rig.rows(new WheelLoad());

        assertThat(find(rows, "left wheels of axle 1").demand()).isCloseTo(1500 + 300 * 0.75, EXACT);
        assertThat(find(rows, "right wheels of axle 1").demand()).isCloseTo(1500 + 300 * 0.25, EXACT);
        assertThat(find(rows, "left wheels of axle 2").demand()).isCloseTo(1000 + 500 * 0.75, EXACT);
        assertThat(find(rows, "left wheels of axle 2").capacity()).isEqualTo(4500.0);
    }

    @Test
    void theDifferenceOfSidesIsAShareOfTheLoadOfTheAxle() {
        Rig rig = new Rig()
                .limit(Figure.SIDE_DIFFERENCE, 0.07)
                .carrier(TestCarrier.truck().build())
                .cube("box", 800, 2000, 1000, 0);

        List<Row> rows = rig.rows(new SideDifference());

        assertThat(find(rows, "axle 1").demand()).isCloseTo(150.0 / 3300, EXACT);
        assertThat(find(rows, "axle 1").verdict()).isEqualTo(Verdict.MET);
        Row rear = find(rows, "axle 2");
        assertThat(rear.demand()).isCloseTo(250.0 / 2500, EXACT);
        assertThat(rear.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(rear.finding())
                .isEqualTo(
                        "The left wheels of axle 2 of Truck bear up to 10 % of its load more than the other ones; allowed"
                                + " are 7 %.");
        assertThat(rear.mend()).startsWith("Move mass to the right: Box alone would do it with");
    }

    /** The mend of each side brings the axle just to its bound, and a millimetre less does not. */
    @Test
    void theMendOfADifferenceOfSidesHolds() {
        for (int sign : new int[] {1, -1}) {
            int from = sign > 0 ? 1000 : 0;
            Row broken = find(sided(from).rows(new SideDifference()), "axle 2");
            int mm = Integer.parseInt(Objects.requireNonNull(broken.mend()).replaceAll("\\D+", ""));

            Row mended = find(sided(from - sign * (mm + 1)).rows(new SideDifference()), "axle 2");
            Row less = find(sided(from - sign * (mm - 1)).rows(new SideDifference()), "axle 2");

            assertThat(mended.verdict()).as(broken.mend()).isEqualTo(Verdict.CLOSE);
            assertThat(mended.mend()).isNull();
            assertThat(less.verdict()).as(broken.mend()).isEqualTo(Verdict.BROKEN);
        }
    }

    private static Rig sided(int y) {
        return new Rig()
                .limit(Figure.SIDE_DIFFERENCE, 0.07)
                .carrier(TestCarrier.truck().build())
                .cube("box", 800, 2000, y, 0);
    }

    @Test
    void theRightSideGovernsWhenItBearsMore() {
        Rig rig = new Rig()
                .limit(Figure.SIDE_DIFFERENCE, 0.07)
                .carrier(TestCarrier.truck().build())
                .cube("box", 800, 2000, 0, 0);

        Row rear = find(rig.rows(new SideDifference()), "axle 2");

        assertThat(rear.finding()).startsWith("The right wheels of axle 2");
        assertThat(rear.mend()).startsWith("Move mass to the left");
    }

    @Test
    void sharesAreOfTheMassInTheSameState() {
        Rig rig = new Rig()
                .limit(Figure.STEERED_SHARE, 0.6)
                .limit(Figure.DRIVEN_SHARE, 0.25)
                .carrier(TestCarrier.truck().build())
                .cube("box", 800, 2000, 500, 0);

        Row steered = rig.row(new SteeredShare());
        Row driven = rig.row(new DrivenShare());

        assertThat(steered.sense()).isEqualTo(Row.Sense.AT_LEAST);
        assertThat(steered.capacity()).isCloseTo(3300.0 / 5800, EXACT);
        assertThat(steered.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(steered.finding()).isEqualTo("The steered axles of Truck bear at least 56.9 %, and must bear 60 %.");
        assertThat(steered.mend()).isEqualTo("Move mass towards these axles.");
        assertThat(driven.capacity()).isCloseTo(2500.0 / 5800, EXACT);
        assertThat(driven.verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void drivenAxlesBearTheirShareOfTheCombination() {
        // given 300 kg 1 m before the trailer's axle: 100 kg on the coupling, 1.5 m behind the rear axle
        Row driven = withTrailer().limit(Figure.DRIVEN_SHARE, 0.25).row(new DrivenShare());

        double rear = 2000 + 100 * 5.5 / 4;
        assertThat(driven.capacity()).isCloseTo(rear / (5000 + 500 + 300), EXACT);
        assertThat(driven.state()).isEqualTo("on the road, trailer on");
    }

    @Test
    void figuresThatNoRuleStatesMakeRowsNotAssessed() {
        Rig rig = new Rig().carrier(TestCarrier.truck().build());

        for (Limit limit : List.of(new SteeredShare(), new DrivenShare(), new SideDifference())) {
            assertThat(rig.row(limit).verdict()).isEqualTo(Verdict.NOT_ASSESSED);
            assertThat(rig.row(limit).finding()).startsWith("No rule set states axles.");
        }
        assertThat(rig.row(new GrossLimit()).verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void aGrossLimitOfTheBriefIsHeld() {
        Rig rig = new Rig()
                .limit(Figure.GROSS_LIMIT, 7500)
                .carrier(TestCarrier.truck().build());

        Row row = rig.cube("box", 2600, 2000, 500, 0).row(new GrossLimit());

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.excess()).isCloseTo(100, EXACT);
        assertThat(row.mend()).isEqualTo("Take out at least 100 kg, or move it elsewhere.");
    }

    @Test
    void theCouplingBearsTheTrailersPartAndTheTruckBearsThatOnItsAxles() {
        Rig rig = withTrailer();

        Row coupling = rig.rows(new CouplingLoad()).get(0);
        Row rear = find(rig.rows(new AxleLoad()), "axle 2 of Truck");
        Row trailerAxle = find(rig.rows(new AxleLoad()), "axle 1 of Trailer");

        assertThat(coupling.demand()).isCloseTo(100, EXACT);
        assertThat(coupling.capacity()).isEqualTo(100.0);
        assertThat(coupling.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(rear.demand()).isCloseTo(2000 + 100 * 5.5 / 4, EXACT);
        assertThat(rear.state()).isEqualTo("on the road, trailer on");
        assertThat(trailerAxle.demand()).isCloseTo(500 + 200, EXACT);
        assertThat(trailerAxle.place()).isNull();
    }

    @Test
    void aLeastCouplingLoadIsHeldToo() {
        Rig rig = trailerRig(TestCarrier.centreAxleTrailer().coupling(3000, 500, 250.0, 150.0, null));

        List<Row> rows = rig.rows(new CouplingLoad());
        Row least = rows.stream()
                .filter(row -> row.title().startsWith("Least"))
                .findFirst()
                .orElseThrow();

        assertThat(least.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(least.excess()).isCloseTo(50, EXACT);
        assertThat(least.finding())
                .isEqualTo("Trailer puts on its coupling at least 100 kg, and needs 150 kg: 50 kg too little.");
        Row most = rows.stream().filter(row -> row != least).findFirst().orElseThrow();
        assertThat(most.capacity()).isEqualTo(100.0);
    }

    @Test
    void combinationAndDrawnMassAreHeld() {
        List<Row> rows = withTrailer().rows(new CombinationMass());

        Row combination = find(rows, "Mass of the combination");
        Row drawn = find(rows, "Mass of the drawn trailer");
        assertThat(combination.demand()).isCloseTo(5800, EXACT);
        assertThat(combination.capacity()).isEqualTo(16_000.0);
        assertThat(drawn.demand()).isCloseTo(800, EXACT);
        assertThat(drawn.capacity()).isEqualTo(750.0);
        assertThat(drawn.verdict()).isEqualTo(Verdict.BROKEN);
    }

    @Test
    void combinationRatingsThatAreMissingAreNotAssessed() {
        Rig rig = new Rig()
                .carrier(TestCarrier.truck()
                        .coupling(-5500, 500, null, null, null)
                        .build())
                .trailer(TestCarrier.centreAxleTrailer()
                        .coupling(3000, 500, null, null, null)
                        .build());

        assertThat(rig.rows(new CombinationMass()))
                .hasSize(2)
                .allSatisfy(row -> assertThat(row.verdict()).isEqualTo(Verdict.NOT_ASSESSED));
        assertThat(rig.row(new CouplingLoad()).verdict()).isEqualTo(Verdict.NOT_ASSESSED);
    }

    @Test
    void wheelsStayOnTheGround() {
        Rig rig = new Rig().carrier(TestCarrier.truck().build());

        Row held = rig.cube("box", 800, 2000, 500, 0).row(new AxleContact());
        // 40 t 0.5 m behind the rear axle: −5000 on the front axle, of which each side has half
        Row lifted = new Rig()
                .carrier(TestCarrier.truck().build())
                .cube("box", 40_000, 0, 500, 0)
                .row(new AxleContact());

        assertThat(held.verdict()).isEqualTo(Verdict.MET);
        assertThat(held.capacity()).isCloseTo(1250, EXACT);
        assertThat(lifted.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(lifted.finding()).isEqualTo("The left wheels of axle 1 of Truck lift off: 1000 kg are missing.");
    }

    @Test
    void axlesOfAGroupShareEquallyAtTheirMiddle() {
        // given a tandem at −4 and −5.2 m: 920 kg at −2.3 m stand half on the front axle, a quarter on each of the
        // tandem
        Rig rig = new Rig()
                .carrier(TestCarrier.of(Kind.TRUCK)
                        .bodyAt(-4800, -1000, 1200)
                        .axle(0, 2000, 3000, 7000.0, 1)
                        .axle(-4000, 2000, 1500, 9000.0, 2)
                        .axle(-5200, 2000, 1000, 9000.0, 2)
                        .build())
                .cube("box", 920, 2000, 500, 0);

        List<Row> rows = rig.rows(new AxleLoad());

        assertThat(find(rows, "axle 1").demand()).isCloseTo(3460, EXACT);
        assertThat(find(rows, "axle 2").demand()).isCloseTo(1730, EXACT);
        assertThat(find(rows, "axle 3").demand()).isCloseTo(1230, EXACT);
    }

    /** Rigid beam on three equal springs at 0, −2 and −4 m: a mass at −1 m gives 1/3 + 1/8, 1/3 and 1/3 − 1/8 of itself... */
    @Test
    void threeGroupsShareAsSpringsUnderARigidBeam() {
        // moments about the middle spring: 1 m · P = k·φ (2² + 2²), so the outer ones differ by P·1·2/8 = P/4
        Rig rig = threeAxles().cube("box", 2400, 3500, 500, 0);

        List<Row> rows = rig.rows(new AxleLoad());

        assertThat(find(rows, "axle 1").demand()).isCloseTo(1000 + 800 + 600, EXACT);
        assertThat(find(rows, "axle 2").demand()).isCloseTo(1000 + 800, EXACT);
        assertThat(find(rows, "axle 3").demand()).isCloseTo(1000 + 800 - 600, EXACT);
        assertThat(rig.row(new AxleContact()).verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void theSpringModelDoesNotHoldWhereAnAxleLiftsOff() {
        Row row = threeAxles().cube("box", 80_000, 3950, 500, 0).row(new AxleContact());

        assertThat(row.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row.finding()).contains("would lift off, so that the loads of 3 axle groups cannot be told");
    }

    @Test
    void whereStaticsDoNotSufficeItIsSaid() {
        Rig single = new Rig()
                .carrier(TestCarrier.of(Kind.TRUCK)
                        .axle(0, 2000, 1000, 2000.0, 1)
                        .build());
        Rig two = new Rig()
                .carrier(TestCarrier.truck()
                        .coupling(-5500, 500, 100.0, null, 750.0)
                        .build())
                .trailer(TestCarrier.centreAxleTrailer()
                        .axle(-3000, 1800, 500, 2000.0, 2)
                        .build());
        Rig none = new Rig()
                .carrier(TestCarrier.truck().build())
                .trailer(TestCarrier.centreAxleTrailer().build());

        assertThat(single.row(new AxleLoad()).finding())
                .isEqualTo(
                        "The axle loads of Truck cannot be told: Truck stands on a single axle group, which does not hold"
                                + " it up alone.");
        assertThat(two.rows(new AxleLoad()))
                .hasSize(2)
                .allSatisfy(row -> assertThat(row.finding()).contains("has 2 axle groups and a coupling that bears"));
        assertThat(none.rows(new AxleLoad()).get(0).finding())
                .isEqualTo(
                        "The axle loads of Truck cannot be told: the carrier Truck draws a trailer but has no coupling."
                                + " Give it in carrier truck.");
    }

    @Test
    void aDrawbarTrailerLoadsItsOwnTwoAxlesOnly() {
        Rig rig = new Rig()
                .carrier(TestCarrier.truck().build())
                .trailer(TestCarrier.of(Kind.DRAWBAR_TRAILER)
                        .axle(0, 1800, 400, 3000.0, 1)
                        .axle(-3000, 1800, 400, 3000.0, 2)
                        .build())
                .load(
                        "box",
                        Rig.item("box", CUBE, Rig.mass(300, 500, 500, 500)),
                        Pose.at(Point.ofMm(-1500, -500, 900)));

        List<Row> rows = rig.rows(new AxleLoad());

        assertThat(find(rows, "axle 1 of Trailer").demand()).isCloseTo(400 + 200, EXACT);
        assertThat(find(rows, "axle 2 of Trailer").demand()).isCloseTo(400 + 100, EXACT);
        assertThat(find(rows, "axle 2 of Truck").demand()).isCloseTo(2000, EXACT);
        assertThat(find(rows, "axle 2 of Truck").state()).isEqualTo("on the road");
        assertThat(rig.row(new CouplingLoad()).finding())
                .isEqualTo("The brief has no trailer that loads its coupling.");
    }

    private static Rig threeAxles() {
        return new Rig()
                .carrier(TestCarrier.of(Kind.TRUCK)
                        .bodyAt(-5000, -1000, 1200)
                        .axle(0, 2000, 1000, 9000.0, 1)
                        .axle(-2000, 2000, 1000, 9000.0, 2)
                        .axle(-4000, 2000, 1000, 9000.0, 3)
                        .build());
    }

    private static Rig withTrailer() {
        return trailerRig(TestCarrier.centreAxleTrailer());
    }

    private static Rig trailerRig(TestCarrier trailer) {
        return new Rig()
                .carrier(TestCarrier.truck()
                        .coupling(-5500, 500, 100.0, null, 750.0)
                        .combination(16_000)
                        .build())
                .trailer(trailer.build())
                .load("box", Rig.item("box", CUBE, Rig.mass(300, 500, 500, 500)), Pose.at(Point.ofMm(500, -500, 500)));
    }

    static Row find(List<Row> rows, String title) {
        return rows.stream()
                .filter(row -> row.title().contains(title))
                .findFirst()
                .orElseThrow(() -> new AssertionError(title + " is not among " + rows));
    }
}

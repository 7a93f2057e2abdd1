package org.shelterwright.layouts.ledger.axles.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.carrier.Carrier.Kind;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.rig.Rig;
import org.shelterwright.layouts.rig.TestCarrier;
import org.shelterwright.layouts.rules.RuleSet;
import org.shelterwright.layouts.rules.RuleSet.AxleRules;

class RoadRulesTest {
    private static final Offset<Double> EXACT = within(1e-9);
    private static final RuleSet EU = new RuleSet("eu", "EU", AxleRules.EU_96_53, List.of());
    private static final RuleSet US = new RuleSet("us", "US", AxleRules.US_23_CFR_658, List.of());
    private static final double LB = 0.45359237;

    @Test
    void nothingIsHeldThatIsNotChosen() {
        Rig rig = new Rig().carrier(TestCarrier.truck().build());

        assertThat(rig.row(new EuRoad()).finding())
                .isEqualTo("Directive 96/53/EC is not chosen, or the brief names no carrier.");
        assertThat(rig.row(new UsRoad()).verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void aTwoAxleTruckIsHeldAxleByAxleGrossAndOutside() {
        List<Row> rows =
                new Rig().rules(EU).carrier(TestCarrier.truck().build()).rows(new EuRoad());

        assertThat(find(rows, "axle 1 of Truck").capacity()).isEqualTo(10_000.0);
        assertThat(find(rows, "axle 2 of Truck").capacity()).isEqualTo(11_500.0);
        assertThat(find(rows, "gross mass").capacity()).isEqualTo(18_000.0);
        assertThat(find(rows, "gross mass").demand()).isEqualTo(5000.0);
        assertThat(find(rows, "length").demand()).isEqualTo(7000.0);
        assertThat(find(rows, "width").demand()).isEqualTo(2500.0);
        assertThat(find(rows, "height").demand()).isEqualTo(1200.0 + 2050.0);
        assertThat(find(rows, "height").capacity()).isEqualTo(4000.0);
        assertThat(rows).hasSize(6);
    }

    @Test
    void theBodyOutsideMakesTheVehicleWiderAndLonger() {
        List<Row> rows = new Rig()
                .rules(EU)
                .carrier(TestCarrier.truck().size(3000, 1000).build())
                .rows(new EuRoad());

        assertThat(find(rows, "length").demand()).isEqualTo(4100.0);
        assertThat(find(rows, "width").demand()).isEqualTo(2100.0);
    }

    @Test
    void sizesOutsideTheLimitAreBroken() {
        List<Row> rows = new Rig()
                .rules(EU)
                .carrier(TestCarrier.truck().size(12_001, 2551).build())
                .rows(new EuRoad());

        assertThat(find(rows, "length").verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(find(rows, "width").excess()).isCloseTo(1, EXACT);
        assertThat(find(rows, "width").finding()).isEqualTo("Truck is wide 2551 mm outside; allowed are 2550 mm.");
    }

    @Test
    void aTandemIsFoundByDistanceAndEarnsMoreWithTwinTyresAndAir() {
        assertThat(tandem(-5299, false).capacity()).isEqualTo(16_000.0);
        assertThat(tandem(-5300, false).capacity()).isEqualTo(18_000.0);
        assertThat(tandem(-5300, true).capacity()).isEqualTo(19_000.0);
        assertThat(tandem(-5300, true).demand()).isEqualTo(2500.0);
        assertThat(find(threeAxles(-5300, true), "gross mass").capacity()).isEqualTo(26_000.0);
        assertThat(find(threeAxles(-5300, false), "gross mass").capacity()).isEqualTo(25_000.0);
        assertThat(find(threeAxles(-5800, false), "axle 3").capacity()).isEqualTo(11_500.0);
    }

    private static Row tandem(int x, boolean twinAndAir) {
        return find(threeAxles(x, twinAndAir), "axle 2 to axle 3 of Truck");
    }

    private static List<Row> threeAxles(int x, boolean twinAndAir) {
        return new Rig()
                .rules(EU)
                .carrier(TestCarrier.of(Kind.TRUCK)
                        .bodyAt(-5000, -1000, 1200)
                        .axle(0, 2000, 3000, 7000.0, true, false, false, 1)
                        .axle(-4000, 2000, 1500, 9000.0, false, true, twinAndAir, 2)
                        .axle(x, 2000, 1000, 9000.0, false, true, twinAndAir, 2)
                        .build())
                .rows(new EuRoad());
    }

    @Test
    void fourAxlesInAllMayWeigh36Tonnes() {
        // from memory: Annex I, 2.2.3; five axles: 40 t (as quoted)
        Rig four = new Rig()
                .rules(EU)
                .carrier(TestCarrier.truck().build())
                .trailer(drawbar().build());
        Rig five = new Rig()
                .rules(EU)
                .carrier(TestCarrier.truck().build())
                .trailer(drawbar().axle(-4300, 1800, 400, 3000.0, 2).build());

        Row combination = find(four.rows(new EuRoad()), "combination");
        assertThat(combination.capacity()).isEqualTo(36_000.0);
        assertThat(combination.source().text()).endsWith("(from memory)");
        assertThat(find(four.rows(new EuRoad()), "gross mass of Trailer").capacity())
                .isEqualTo(18_000.0);
        assertThat(find(four.rows(new EuRoad()), "road train").demand()).isEqualTo(14_000.0);
        assertThat(find(five.rows(new EuRoad()), "combination").capacity()).isEqualTo(40_000.0);
        assertThat(find(five.rows(new EuRoad()), "gross mass of Trailer").capacity())
                .isEqualTo(24_000.0);
        assertThat(find(five.rows(new EuRoad()), "axle 2 to axle 3 of Trailer").capacity())
                .isEqualTo(18_000.0);
    }

    @Test
    void aRoadTrainLongerThanTheSumOfItsPartsIsMeasuredByHand() {
        Rig rig = new Rig()
                .rules(EU)
                .carrier(TestCarrier.truck().size(11_000, 2500).build())
                .trailer(drawbar().size(8000, 2500).build());

        assertThat(find(rig.rows(new EuRoad()), "road train").verdict()).isEqualTo(Verdict.NOT_ASSESSED);
    }

    @Test
    void threeTrailerAxlesCloseTogetherAreATriAxle() {
        Rig rig = new Rig()
                .rules(EU)
                .carrier(TestCarrier.truck()
                        .coupling(-5500, 500, 500.0, null, null)
                        .build())
                .trailer(TestCarrier.of(Kind.CENTRE_AXLE_TRAILER)
                        .coupling(4000, 500, 500.0, null, null)
                        .axle(0, 1800, 300, 3000.0, 1)
                        .axle(-1300, 1800, 300, 3000.0, 1)
                        .axle(-2700, 1800, 300, 3000.0, 1)
                        .build());

        Row tri = find(rig.rows(new EuRoad()), "axle 1 to axle 3 of Trailer");
        assertThat(tri.capacity()).isEqualTo(21_000.0);
        assertThat(tri.demand()).isCloseTo(900, EXACT);
    }

    @Test
    void unitedStatesRulesHoldEveryGroupOfTheCombination() {
        // given a truck with axles at 0 and −4 m and a trailer axle at −5.5 − 3 = −8.5 m (27 ft 11 in from the first)
        Rig rig = new Rig()
                .rules(US)
                .carrier(TestCarrier.truck()
                        .coupling(-5500, 500, 100.0, null, null)
                        .build())
                .trailer(TestCarrier.centreAxleTrailer().build())
                .load(
                        "box",
                        Rig.item("box", Size.ofMm(1000, 1000, 1000), Rig.mass(300, 500, 500, 500)),
                        Pose.at(Point.ofMm(500, -500, 500)));

        List<Row> rows = rig.rows(new UsRoad());

        assertThat(find(rows, "axle 2 of Truck").demand()).isCloseTo(2000 + 100 * 5.5 / 4, EXACT);
        assertThat(find(rows, "axle 2 of Truck").capacity()).isCloseTo(20_000 * LB, EXACT);
        assertThat(find(rows, "gross mass").demand()).isCloseTo(5800, EXACT);
        assertThat(find(rows, "gross mass").capacity()).isCloseTo(80_000 * LB, EXACT);
        // truck alone: 5000 kg of 43 000 lb at 13 ft; all three: 5800 kg of 57 000 lb at 28 ft; the last two: 2737.5 +
        // 700
        Row bridge = find(rows, "bridge");
        assertThat(bridge.capacity()).isCloseTo(BridgeFormula.formulaLb(13, 2) * LB, EXACT);
        assertThat(bridge.demand()).isCloseTo(5100, EXACT);
        assertThat(bridge.finding()).contains("The 2 axles axle 1 to axle 2 of Truck, 4000 mm apart, bear");
        assertThat(find(rows, "width of Truck").capacity()).isCloseTo(2590.8, EXACT);
        assertThat(rows).hasSize(3 + 1 + 1 + 2);
    }

    @Test
    void axlesUpTo96InchesApartAreATandemInTheUnitedStates() {
        Rig rig = new Rig()
                .rules(US)
                .carrier(TestCarrier.of(Kind.TRUCK)
                        .bodyAt(-5000, -1000, 1200)
                        .axle(0, 2000, 3000, 7000.0, 1)
                        .axle(-4000, 2000, 1500, 9000.0, 2)
                        .axle(-5300, 2000, 1000, 9000.0, 2)
                        .build());

        Row tandem = find(rig.rows(new UsRoad()), "axle 2 to axle 3");

        assertThat(tandem.capacity()).isCloseTo(34_000 * LB, EXACT);
        assertThat(tandem.demand()).isEqualTo(2500.0);
    }

    /** 23 CFR 658.17(e): two consecutive tandems at least 36 ft apart may bear 34 000 lb each; the formula gives 66 000. */
    @Test
    void twoTandems36FeetApartBear68000Pounds() {
        int foot = 304_800;
        assertThat(UsRoad.allowedLb(axles(0, 4 * foot, 32 * foot, 36 * foot))).isEqualTo(68_000);
        assertThat(UsRoad.allowedLb(axles(0, 4 * foot, 32 * foot - 1, 36 * foot - 1)))
                .isEqualTo(66_000);
        assertThat(UsRoad.allowedLb(axles(0, 9 * foot, 32 * foot, 36 * foot))).isEqualTo(66_000);
        assertThat(UsRoad.allowedLb(axles(0, 4 * foot, 27 * foot, 36 * foot))).isEqualTo(66_000);
    }

    private static List<RoadAxle> axles(int... behind) {
        return Arrays.stream(behind)
                .mapToObj(x -> new RoadAxle(null, null, 0, -x))
                .toList();
    }

    private static TestCarrier drawbar() {
        return TestCarrier.of(Kind.DRAWBAR_TRAILER)
                .axle(0, 1800, 400, 3000.0, 1)
                .axle(-3000, 1800, 400, 3000.0, 2);
    }

    private static Row find(List<Row> rows, String title) {
        return rows.stream()
                .filter(row -> row.title().contains(title))
                .findFirst()
                .orElseThrow(() -> new AssertionError(title + " is not among " + rows));
    }
}

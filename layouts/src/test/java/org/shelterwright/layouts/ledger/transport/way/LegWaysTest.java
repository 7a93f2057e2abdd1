package org.shelterwright.layouts.ledger.transport.way;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.catalog.transit.Underside;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.rules.LoadCase;
import org.shelterwright.layouts.rules.RuleSets;
import org.shelterwright.layouts.transport.Leg;
import org.shelterwright.layouts.transport.Restriction;
import org.shelterwright.layouts.transport.SampleJourney;
import org.shelterwright.layouts.transport.TransportRig;
import org.shelterwright.layouts.transport.scene.JourneyScene;
import org.shelterwright.layouts.transport.scene.Shape;
import org.shelterwright.layouts.transport.scene.Wheel;

class LegWaysTest {
    /** A vehicle of 8 t with its axles 4 m apart, 1.20 m high in the middle. */
    private static Shape vehicle(List<Box> solids) {
        return new Shape(
                "v",
                "Vehicle",
                Size.ofMm(6000, 2400, 3000),
                solids,
                List.of(
                        new Wheel("rear axle", 1_000_000, 1_200_000, 1_900_000, 2_000, 2_000),
                        new Wheel("front axle", 5_000_000, 1_200_000, 1_900_000, 2_000, 2_000)),
                new Rect(1_000_000, 250_000, 5_000_000, 2_150_000),
                List.of(),
                8_000.0,
                0,
                Point.ofMm(3000, 1200, 1200),
                Underside.TYRES,
                null,
                null,
                List.of());
    }

    /**
     * Self-check (computed): on 10° the lower axle bears m (a cos θ + h sin θ)/L, so, seen against the slope, m h tan θ / L = 423.2 kg
     * more than its half.
     */
    @Test
    void theLowerAxleBearsMoreOnASlope() {
        double kg = RampPasses.axleKg(vehicle(List.of(Box.ofMm(0, 0, 500, 6000, 2400, 3000))), 10);

        double more = kg / Math.cos(Math.toRadians(10)) - 4_000;
        assertThat(more).isCloseTo(8_000 * 1.2 * Math.tan(Math.toRadians(10)) / 4, within(1e-9));
        assertThat(more).isCloseTo(423.2, within(0.1));
    }

    /** Centre 1 m behind the middle of axles 4 m apart, 1.2 m high, on 10°: 8 t (3 cos 10° + 1.2 sin 10°)/4 on the rear, turned round too. */
    @Test
    void theHeavierAxleGovernsOnASlopeWhicheverEndIsUp() {
        double cos = Math.cos(Math.toRadians(10));
        double sin = Math.sin(Math.toRadians(10));
        double expected = 8_000 * (3 * cos + 1.2 * sin) / 4;

        assertThat(RampPasses.axleKg(withCentre(2_000), 10)).isCloseTo(expected, within(1e-6));
        assertThat(RampPasses.axleKg(withCentre(4_000), 10)).isCloseTo(expected, within(1e-6));
    }

    private static Shape withCentre(int x) {
        double front = 8_000 * (x - 1_000) / 4_000.0;
        return on(x, axle("rear axle", 1_000, 8_000 - front), axle("front axle", 5_000, front));
    }

    private static Wheel axle(String name, int x, double kg) {
        return new Wheel(name, x * 1_000, 1_200_000, 1_900_000, kg / 2, kg / 2);
    }

    /** The same vehicle with its centre at a place (mm), on other axles. */
    private static Shape on(int x, Wheel... wheels) {
        Shape one = vehicle(List.of(Box.ofMm(0, 0, 500, 6000, 2400, 3000)));
        return new Shape(
                one.id(),
                one.name(),
                one.size(),
                one.solids(),
                List.of(wheels),
                one.foot(),
                one.eyes(),
                one.massKg(),
                one.uncertaintyKg(),
                Point.ofMm(x, 1200, 1200),
                one.underside(),
                one.layout(),
                one.crate(),
                List.of());
    }

    /**
     * A tandem of 1 m and 2 m with 3 t each and a front axle at 6 m with 2 t: the tandem bears at 1.5 m, so m h sin θ / 4.5 m goes to it,
     * half to each of its axles (by hand).
     */
    @Test
    void theAxlesOfATandemShareWhatTheSlopeShifts() {
        Shape tandem = on(2_625, axle("1", 1_000, 3_000), axle("2", 2_000, 3_000), axle("3", 6_000, 2_000));
        double cos = Math.cos(Math.toRadians(10));
        double sin = Math.sin(Math.toRadians(10));

        assertThat(RampPasses.axleKg(tandem, 10)).isCloseTo(3_000 * cos + 8_000 * 1.2 * sin / 4.5 / 2, within(1e-6));
    }

    /** One axle at 2 m with 7 t and a support at 6 m with 1 t: nose up, m h sin θ / 4 m goes to the axle; the support is no axle. */
    @Test
    void aTrailerLeansOnItsAxleAndItsSupport() {
        Wheel support = new Wheel("support", 6_000_000, 1_200_000, 0, 1_000, 0);
        double expected = 7_000 * Math.cos(Math.toRadians(10)) + 8_000 * 1.2 * Math.sin(Math.toRadians(10)) / 4;

        assertThat(RampPasses.axleKg(on(2_500, axle("axle", 2_000, 7_000), support), 10))
                .isCloseTo(expected, within(1e-6));
        assertThat(RampPasses.axleKg(on(2_000, axle("axle", 2_000, 8_000)), 10))
                .as("what balances on one axle is not told")
                .isNull();
    }

    @Test
    void rampAnglesFollowFromWhatHangsLow() {
        RampAngles angles = RampAngles.of(vehicle(List.of(Box.ofMm(0, 0, 500, 6000, 2400, 3000))));

        // 500 mm high and 1 m beyond each axle; half-way between axles 2 m from both.
        assertThat(angles.approach()).isCloseTo(Math.toDegrees(Math.atan(0.5)), within(1e-9));
        assertThat(angles.departure()).isCloseTo(Math.toDegrees(Math.atan(0.5)), within(1e-9));
        assertThat(angles.crest()).isCloseTo(2 * Math.toDegrees(Math.atan(0.25)), within(1e-9));
        assertThat(angles.tightest()).isEqualTo("departure");
        RampAngles low = RampAngles.of(vehicle(List.of(Box.ofMm(2000, 0, 150, 3000, 2400, 3000))));
        assertThat(low.approach()).isEqualTo(90);
        assertThat(low.crest()).isCloseTo(2 * Math.toDegrees(Math.atan(0.075)), within(1e-9));
        assertThat(low.tightest()).isEqualTo("crest");
    }

    @Test
    void aLoadCaseTurnsWithWhatIsTurned() {
        LoadCase push = TransportRig.push(0.8, 0.5, 0.6, 1, 1);

        assertThat(push.turned(QuarterTurn.R0)).isEqualTo(push);
        assertThat(push.turned(QuarterTurn.R180).forwardG()).isEqualTo(0.5);
        assertThat(push.turned(QuarterTurn.R180).rearwardG()).isEqualTo(0.8);
        assertThat(push.turned(QuarterTurn.R90).sidewaysG()).isEqualTo(0.8);
        assertThat(push.turned(QuarterTurn.R90).forwardG()).isEqualTo(0.6);
    }

    /** EN 12195-1, as in the road rules: 0.8 g with a factor of 1.25 forward, 0.5 g and 0.6 g with 1.1 elsewhere. */
    @Test
    void eachPushKeepsItsSafetyFactorWhenItIsTurned() {
        LoadCase road = RuleSets.builtIn().stream()
                .filter(set -> set.id().equals("road-eu"))
                .flatMap(set -> set.loadCases().stream())
                .findFirst()
                .orElseThrow();

        LoadCase back = road.turned(QuarterTurn.R180);
        LoadCase across = road.turned(QuarterTurn.R270);

        assertThat(back.rearwardG() * back.factor()).isCloseTo(0.8 * 1.25, within(1e-12));
        assertThat(back.forwardG() * back.forwardFactor()).isCloseTo(0.5 * 1.1, within(1e-12));
        assertThat(back.sidewaysG() * back.factor()).isCloseTo(0.6 * 1.1, within(1e-12));
        assertThat(across.sidewaysG() * across.factor()).isCloseTo(0.8 * 1.25, within(1e-12));
        assertThat(across.forwardG() * across.forwardFactor()).isCloseTo(0.6 * 1.1, within(1e-12));
        assertThat(across.rearwardG() * across.factor()).isCloseTo(0.6 * 1.1, within(1e-12));
    }

    /** Up and down a body is pushed as before, whichever way it stands; and the strongest case that a rule set may state can be turned. */
    @Test
    void turningLeavesPushesUpAndDownAndStaysWithinWhatARuleSetMayState() {
        LoadCase strong = new LoadCase(
                "strong",
                "strong",
                100,
                100,
                100,
                3,
                4,
                0.5,
                2,
                10,
                1,
                LoadCase.Basis.PROOF,
                Source.stated("test", null));
        for (QuarterTurn yaw : QuarterTurn.values()) {
            LoadCase turned = strong.turned(yaw);

            assertThat(turned.upG() * turned.factor()).isCloseTo(3, within(1e-12));
            assertThat(turned.downG() * turned.factor()).isCloseTo(4, within(1e-12));
            assertThat(turned.leastDownG()).isEqualTo(0.5);
            assertThat(turned.mostDownG()).isEqualTo(2);
        }
        assertThat(strong.turned(QuarterTurn.R180).rearwardG()
                        * strong.turned(QuarterTurn.R180).factor())
                .isEqualTo(1000);
        assertThat(strong.turned(QuarterTurn.R90).sidewaysG()
                        * strong.turned(QuarterTurn.R90).factor())
                .isEqualTo(1000);
    }

    private static List<Row> rows(JourneyScene scene, int leg, String limit) {
        return TransportRig.rows(scene.legs().get(leg), limit);
    }

    /** The strongest leg governs: contents that hold on road and rail do not hold the 9 g of 14 CFR 25.561 (seen). */
    @Test
    void contentsMustMeetTheRestraintOfEveryLeg() {
        JourneyScene calm = SampleJourney.loaded();
        Leg rail = calm.journey().legs().get(1);
        Leg shunted = new Leg(
                rail.id(),
                rail.name(),
                rail.mode(),
                rail.from(),
                rail.to(),
                null,
                List.of("air-14-cfr-25"),
                List.of(),
                rail.outline(),
                rail.lineCategory(),
                rail.curveM(),
                false,
                null,
                List.of(),
                List.of(),
                rail.loads(),
                List.of(),
                List.of(),
                null);
        JourneyScene hard = calm.with(calm.journey().withLegs(List.of(shunted)));

        assertThat(rows(calm, 0, "contents-held")).hasSize(2).allMatch(row -> row.verdict() == Verdict.MET);
        assertThat(rows(calm, 1, "contents-held")).hasSize(2).allMatch(row -> row.verdict() == Verdict.MET);
        Row row = rows(hard, 0, "contents-held").stream()
                .filter(one -> one.units().contains("river-post"))
                .findFirst()
                .orElseThrow();
        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.units()).contains("wagon-1").contains("river-post");
        assertThat(row.finding()).startsWith("River Post on its truck: ").contains("more limits of it are broken.");
    }

    @Test
    void vehiclesOnTheirOwnWheelsAnswerRoadRulesAndSizes() {
        JourneyScene scene = SampleJourney.loaded();

        assertThat(rows(scene, 0, "on-road")).hasSize(2).noneMatch(row -> row.verdict() == Verdict.BROKEN);
        assertThat(rows(scene, 0, "road-size"))
                .extracting(Row::finding)
                .contains(
                        "River Post on its truck is 3380 mm high; Road in the European Union allows 4000 mm.",
                        "River Post on its truck with Generator trailer is 10270 mm long; Road in the European Union allows"
                                + " 18750 mm.");
        assertThat(rows(scene, 1, "ramp")).hasSize(6).allMatch(row -> row.verdict() == Verdict.MET);
        assertThat(rows(scene, 1, "lifted")).hasSize(1).allMatch(row -> row.verdict() == Verdict.MET);
    }

    @Test
    void aBridgeWithoutARatingIsNotAssessed() {
        JourneyScene scene = SampleJourney.loaded();
        Leg road = scene.journey().legs().get(2);
        Leg asked = new Leg(
                road.id(),
                road.name(),
                road.mode(),
                road.from(),
                road.to(),
                null,
                road.ruleSets(),
                List.of(),
                road.outline(),
                null,
                null,
                false,
                null,
                List.of(new Restriction("Sill bridge", List.of(Restriction.Asked.GROSS), null, null, null, null, null)),
                road.drives(),
                List.of(),
                List.of(),
                List.of(),
                null);
        JourneyScene changed = scene.with(scene.journey().withLegs(List.of(asked)));

        assertThat(rows(changed, 0, "restriction")).allMatch(row -> row.verdict() == Verdict.NOT_ASSESSED);
        assertThat(rows(changed, 0, "restriction").get(0).finding())
                .isEqualTo(
                        "The gross that Sill bridge takes is not known. Ask its keeper, and give it in the restrictions of leg"
                                + " road-in.");
        assertThat(rows(scene, 2, "restriction")).hasSize(8).allMatch(row -> row.verdict() == Verdict.MET);
    }
}

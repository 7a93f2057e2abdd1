package org.shelterwright.layouts.ledger.restraint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.shelterwright.catalog.body.Strength;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.rules.LoadCase;
import org.shelterwright.layouts.rules.LoadCase.Basis;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.trial.Trial;
import org.shelterwright.layouts.trial.TrialItem;

class FixingStrengthTest {
    private static Row row(Trial trial, int index) {
        return trial.rows(Pushed.STRENGTH).get(index);
    }

    private static double demand(Row row) {
        return Objects.requireNonNull(row.demand());
    }

    /** Pull M L / ΣL² about the front edge, M = m g (a h − x); two bolts at 550 mm, two at 50 mm from it. */
    @Test
    void overturningAgreesWithTheClosedForm() {
        Trial trial = Trial.in(Pushed.body(5000, 8000))
                .rules(Pushed.forward(1))
                .floor("cabinet", Pushed.cabinet(100, "M10"), 1000, 1000);

        Row row = row(trial, 0);

        double moment = 100 * Pushed.G * (1 * 0.5 - 0.3);
        double pull = moment * 0.55 / (2 * (0.55 * 0.55 + 0.05 * 0.05));
        double shear = 100 * Pushed.G / 4;
        assertThat(demand(row)).isCloseTo(pull / 5000 + shear / 8000, within(1e-9));
        assertThat(row.verdict()).isEqualTo(Verdict.MET);
        assertThat(row.state()).isEqualTo("own case, forward");
        assertThat(row.finding())
                .isEqualTo(
                        "Fixing F1 of Cabinet bears 177 N of pull and 245 N of shear under own case, forward: 6.6 % of"
                                + " what floor grid bears.");
    }

    @Test
    void turnedWithItsPushNothingChanges() {
        Row ahead = row(
                Trial.in(Pushed.body(5000, 8000))
                        .rules(Pushed.forward(1))
                        .floor("cabinet", Pushed.cabinet(100, "M10"), 1000, 1000),
                0);
        Row left = row(
                Trial.in(Pushed.body(5000, 8000))
                        .rules(Pushed.sideways(1))
                        .put("cabinet", Pushed.cabinet(100, "M10"), Trial.onFloor(1000, 1000, QuarterTurn.R90)),
                0);

        assertThat(demand(left)).isCloseTo(demand(ahead), within(1e-12));
    }

    /** Two of four bolts in slots along x leave the shear of a push forward to the other two, however the unit is turned. */
    @Test
    void slotsBearNothingAlongThem() {
        TrialItem slotted = TrialItem.of("cabinet", 600, 400, 1000)
                .mass(100.0, Point.ofMm(300, 200, 500))
                .slotted(Point.ofMm(50, 50, 0), Face.BOTTOM, "M10", Axis.X)
                .slotted(Point.ofMm(50, 350, 0), Face.BOTTOM, "M10", Axis.X)
                .fixing(Point.ofMm(550, 50, 0), Face.BOTTOM, "M10")
                .fixing(Point.ofMm(550, 350, 0), Face.BOTTOM, "M10");
        double shear = 100 * Pushed.G / 2;

        Row ahead =
                row(Trial.in(Pushed.body(1e9, 8000)).rules(Pushed.forward(1)).floor("cabinet", slotted, 1000, 1000), 0);
        Row left = row(
                Trial.in(Pushed.body(1e9, 8000))
                        .rules(Pushed.sideways(1))
                        .put("cabinet", slotted, Trial.onFloor(1000, 1000, QuarterTurn.R90)),
                0);

        assertThat(demand(ahead)).isCloseTo(shear / 8000, within(1e-6));
        assertThat(demand(left)).isCloseTo(demand(ahead), within(1e-6));
        assertThat(ahead.finding()).startsWith("Fixing F3 of Cabinet bears");
    }

    @Test
    void aBoltThatIsTooWeakIsNamedWithOneThatHolds() {
        Trial trial = Trial.in(Pushed.body(90_000, 90_000))
                .rules(Pushed.forward(12))
                .floor("cabinet", Pushed.cabinet(500, "M10"), 1000, 1000);
        Scene scene = trial.scene();

        Row row = row(trial, 0);

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.finding())
                .startsWith("Fixing F1 of Cabinet bears ")
                .contains("under own case, forward: ")
                .endsWith(" of what its bolt M10 8.8 bears.");
        assertThat(row.mend()).isEqualTo("Take bolts M10 10.9 for Cabinet: then it holds under every load case.");
        Change change = Objects.requireNonNull(
                Holdings.of(scene, Pushed.FASTENERS).all().get(0).mend());
        assertThat(Objects.requireNonNull(change.bolt()).grade()).isEqualTo("10.9");
    }

    @Test
    void hardPointsThatAreTooWeakAreMendedByFurtherFixingsOnHoles() {
        Trial trial = Trial.in(Pushed.body(400, 500))
                .rules(Pushed.forward(1))
                .floor("cabinet", Pushed.cabinet(108, "M10"), 1000, 1000);

        Row row = row(trial, 0);

        assertThat(demand(row)).isBetween(1.0, 1.2);
        assertThat(row.mend())
                .isEqualTo(
                        "Add 1 fixing M10 8.8 to Cabinet at x 50, y 200, z 0 mm of it: then it holds under every load"
                                + " case.");
    }

    @Test
    void whatNoBoltMendsSaysWhatElseWould() {
        Trial trial = Trial.in(Pushed.body(10, 10))
                .rules(Pushed.forward(1))
                .floor("cabinet", Pushed.cabinet(100, "M10"), 1000, 1000);

        assertThat(row(trial, 0).mend())
                .isEqualTo("Use stronger hard points, spread the fixings wider, or brace Cabinet to a wall.");
    }

    @Test
    void exactlyAtItsStrengthItHolds() {
        double shear = 100 * Pushed.G / 4;
        Trial trial = Trial.in(Pushed.body(5000, shear))
                .rules(Pushed.forward(0.5))
                .floor("cabinet", Pushed.cabinet(200, "M10"), 1000, 1000);

        assertThat(demand(row(trial, 0))).isCloseTo(1, within(1e-12));
        assertThat(row(trial, 0).verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(row(trial, 0).mend()).isNull();
    }

    /** 100 kg with their centre 100 mm farther up and ahead than stated: M = m g (a (h + 0.1) − (x − 0.1)), by hand. */
    @Test
    void theCentreIsTakenWhereInItsRangeItIsWorst() {
        Trial trial = Trial.in(Pushed.body(5000, 8000))
                .rules(Pushed.forward(2))
                .floor("cabinet", Pushed.cabinet(100, "M10").centreWithin(100), 1000, 1000);

        double pull = 100 * Pushed.G * (2 * 0.6 - 0.2) * 0.55 / (2 * (0.55 * 0.55 + 0.05 * 0.05));
        assertThat(demand(row(trial, 0))).isCloseTo(pull / 5000 + 2 * 25 * Pushed.G / 8000, within(1e-9));
    }

    /** A tank of 100 kg in one corner and 100 kg in the opposite one weigh as 200 kg in the middle. */
    @Test
    void fullTanksCountWhereTheyAre() {
        TrialItem filled = Pushed.cabinet(100, "M10")
                .mass(100.0, Point.ofMm(600, 400, 1000))
                .tank(0, 100);
        Trial trial = Trial.in(Pushed.body(5000, 8000)).rules(Pushed.forward(1)).floor("cabinet", filled, 1000, 1000);
        Trial middle = Trial.in(Pushed.body(5000, 8000))
                .rules(Pushed.forward(1))
                .floor("cabinet", Pushed.cabinet(200, "M10"), 1000, 1000);

        assertThat(demand(row(trial, 0))).isCloseTo(demand(row(middle, 0)), within(1e-9));
    }

    /**
     * On a wall only what touches it presses: with a back plate whose lower edge lies 100 mm above that of the cupboard, the levers of the
     * bolts are 50 and 350 mm (by hand), on the rear wall as on the left one.
     */
    @Test
    void aWallUnitTipsAboutTheLowerEdgeOfWhatTouchesTheWall() {
        TrialItem item = TrialItem.of("cupboard", 300, 600, 500)
                .on(Surface.WALL)
                .solid(Box.ofMm(0, 0, 100, 50, 600, 500))
                .solid(Box.ofMm(50, 0, 0, 300, 600, 500))
                .mass(20.0, Point.ofMm(150, 300, 250))
                .fixing(Point.ofMm(0, 50, 150), Face.REAR, "M8")
                .fixing(Point.ofMm(0, 550, 150), Face.REAR, "M8")
                .fixing(Point.ofMm(0, 50, 450), Face.REAR, "M8")
                .fixing(Point.ofMm(0, 550, 450), Face.REAR, "M8");
        Strength strength = new Strength(3500.0, 5000.0, null);
        LoadCase still = new LoadCase(
                "still", "still", 0, 0, 0, 0, 1, 1, 1, 1, 1, Basis.PROOF, Source.stated("House rule", null));
        Trial rear = Trial.in(
                        Pushed.body(1, 1).drillZone("backing", Face.REAR, Box.ofMm(0, 0, 0, 0, 2000, 2000), strength))
                .rules(Pushed.set(still))
                .put("cupboard", item, Trial.at(Surface.WALL, 0, 500, 900, QuarterTurn.R0));
        Trial left = Trial.in(Pushed.body(1, 1)
                        .drillZone("backing", Face.LEFT, Box.ofMm(0, 2000, 0, 4000, 2000, 2000), strength))
                .rules(Pushed.set(still))
                .put("cupboard", item, Trial.at(Surface.WALL, 1000, 1700, 900, QuarterTurn.R270));

        double pull = 20 * Pushed.G * 0.15 * 0.35 / (2 * (0.35 * 0.35 + 0.05 * 0.05));
        assertThat(demand(row(rear, 0))).isCloseTo(pull / 3500 + 20 * Pushed.G / 4 / 5000, within(1e-9));
        assertThat(demand(row(left, 0))).isCloseTo(demand(row(rear, 0)), within(1e-9));
    }

    /** A tall cabinet that a brace holds at its top leaves next to nothing for its floor bolts to pull. */
    @Test
    void aBraceAtTheTopTakesTheOverturningOffTheFloor() {
        Strength strength = new Strength(50_000.0, 50_000.0, null);
        TrialItem free = Pushed.cabinet(100, "M10");
        TrialItem braced = Pushed.cabinet(100, "M10").fixing(Point.ofMm(0, 200, 950), Face.REAR, "M10");
        Trial without =
                Trial.in(Pushed.body(50_000, 50_000)).rules(Pushed.forward(1)).floor("cabinet", free, 0, 1000);
        Trial with = Trial.in(Pushed.body(50_000, 50_000)
                        .drillZone("backing", Face.REAR, Box.ofMm(0, 0, 0, 0, 2000, 2000), strength))
                .rules(Pushed.forward(1))
                .floor("cabinet", braced, 0, 1000);

        double[] pulls = pulls(with);
        assertThat(pulls[4]).as("the brace").isGreaterThan(100);
        for (int i = 0; i < 4; i++) {
            assertThat(pulls[i]).isLessThan(0.5 * pulls(without)[0]);
        }
    }

    private static double[] pulls(Trial trial) {
        Solved solved = Objects.requireNonNull(
                Holdings.of(trial.scene(), Pushed.FASTENERS).all().get(0).solved());
        return solved.pullN()[0];
    }

    /** However the unit is turned, further fixings come to lie on holes, and with them it holds. */
    @ParameterizedTest
    @EnumSource(QuarterTurn.class)
    void furtherFixingsHoldWhenTheyAreAdded(QuarterTurn turn) {
        TrialItem item = TrialItem.of("cabinet", 600, 350, 1000)
                .mass(100.0, Point.ofMm(300, 175, 500))
                .fixing(Point.ofMm(50, 50, 0), Face.BOTTOM, "M10")
                .fixing(Point.ofMm(50, 300, 0), Face.BOTTOM, "M10")
                .fixing(Point.ofMm(550, 50, 0), Face.BOTTOM, "M10")
                .fixing(Point.ofMm(550, 300, 0), Face.BOTTOM, "M10");
        LoadCase around = new LoadCase(
                "own", "own case", 1, 1, 1, 0, 0, 1, 1, 1, 1, Basis.PROOF, Source.stated("House rule", null));
        double use = demand(row(pushed(item, turn, 5000, around), 0));
        Trial weak = pushed(item, turn, 5000 * use / 1.05, around);

        Row row = row(weak, 0);

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.mend()).startsWith("Add ");
        Change change = Objects.requireNonNull(
                Holdings.of(weak.scene(), Pushed.FASTENERS).all().get(0).mend());
        change.more().forEach(at -> item.fixing(at, Face.BOTTOM, "M10"));
        assertThat(row(pushed(item, turn, 5000 * use / 1.05, around), 0).verdict())
                .isIn(Verdict.MET, Verdict.CLOSE);
    }

    private static Trial pushed(TrialItem item, QuarterTurn turn, double bearsN, LoadCase around) {
        return Trial.in(Pushed.body(bearsN, bearsN))
                .rules(Pushed.set(around))
                .put("cabinet", item, Trial.onFloor(1000, 1000, turn));
    }

    @Test
    void aThickerBoltIsTakenOnlyWhereTheHolesTakeIt() {
        // given M24 10.9, of which there is no stronger bolt, and M10 holes that take no M12
        TrialItem strongest = Pushed.cabinet(500, "M10");
        Trial trial = Trial.in(Pushed.body(1e6, 1e6)).rules(Pushed.forward(25)).floor("cabinet", strongest, 1000, 1000);

        Row row = row(trial, 0);

        assertThat(row.finding()).endsWith(" of what its bolt M10 8.8 bears.");
        assertThat(row.mend()).doesNotContain("M12").doesNotContain("M16");
    }

    @Test
    void theFixingsOfAHostHoldWhatStandsOnIt() {
        TrialItem box = TrialItem.of("box", 300, 300, 200)
                .on(Surface.ON_UNIT)
                .mass(60.0, Point.ofMm(150, 150, 100))
                .fixing(Point.ofMm(50, 50, 0), Face.BOTTOM, "M10")
                .fixing(Point.ofMm(250, 50, 0), Face.BOTTOM, "M10")
                .fixing(Point.ofMm(50, 250, 0), Face.BOTTOM, "M10")
                .fixing(Point.ofMm(250, 250, 0), Face.BOTTOM, "M10");
        TrialItem host = Pushed.cabinet(100, "M10").support("top", Rect.ofMm(0, 0, 600, 400), 1000, false, 100.0);
        Trial trial = Trial.in(Pushed.body(5000, 8000))
                .rules(Pushed.forward(1))
                .floor("cabinet", host, 1000, 1000)
                .put("box", box, Trial.on("cabinet", 1150, 1050, 1000));

        List<Row> rows = trial.rows(Pushed.STRENGTH);

        double height = (100 * 0.5 + 60 * 1.1) / 160;
        double pull = 160 * Pushed.G * (height - 0.3) * 0.55 / (2 * (0.55 * 0.55 + 0.05 * 0.05));
        Row cabinet = rows.stream()
                .filter(row -> row.units().contains("cabinet"))
                .findFirst()
                .orElseThrow();
        Row guest = rows.stream()
                .filter(row -> row.units().contains("box"))
                .findFirst()
                .orElseThrow();
        assertThat(demand(cabinet)).isCloseTo(pull / 5000 + 160 * Pushed.G / 4 / 8000, within(1e-9));
        assertThat(guest.finding()).endsWith(" of what top of Cabinet bears.");
    }

    /** Weight and push of a wall unit: M L / ΣL² about its lower edge, and the rest in shear. */
    @Test
    void aWallUnitTipsAboutItsLowerEdge() {
        TrialItem item = TrialItem.of("cupboard", 300, 600, 500)
                .on(Surface.WALL)
                .mass(20.0, Point.ofMm(150, 300, 250))
                .fixing(Point.ofMm(0, 50, 50), Face.REAR, "M8")
                .fixing(Point.ofMm(0, 550, 50), Face.REAR, "M8")
                .fixing(Point.ofMm(0, 50, 450), Face.REAR, "M8")
                .fixing(Point.ofMm(0, 550, 450), Face.REAR, "M8");
        Trial trial = Trial.in(Pushed.body(1, 1)
                        .drillZone(
                                "backing",
                                Face.REAR,
                                Box.ofMm(0, 0, 0, 0, 2000, 2000),
                                new Strength(3500.0, 5000.0, null)))
                .rules(Pushed.set(new LoadCase(
                        "still", "still", 0, 0, 0, 0, 1, 1, 1, 1, 1, Basis.PROOF, Source.stated("House rule", null))))
                .put("cupboard", item, Trial.at(Surface.WALL, 0, 500, 900, QuarterTurn.R0));

        double pull = 20 * Pushed.G * 0.15 * 0.45 / (2 * (0.45 * 0.45 + 0.05 * 0.05));
        assertThat(demand(row(trial, 0))).isCloseTo(pull / 3500 + 20 * Pushed.G / 4 / 5000, within(1e-9));
        assertThat(row(trial, 0).state()).isEqualTo("still, down");
    }

    @Test
    void oneBoltAgainstTorsionHoldsNothing() {
        TrialItem item = TrialItem.of("post", 200, 200, 500)
                .mass(20.0, Point.ofMm(100, 150, 250))
                .fixing(Point.ofMm(100, 100, 0), Face.BOTTOM, "M10");
        Trial trial =
                Trial.in(Pushed.body(5000, 8000)).rules(Pushed.forward(0.1)).floor("post", item, 950, 950);

        Row row = row(trial, 0);

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.finding())
                .isEqualTo("The fixings of Post cannot hold it under own case, forward: no pull, shear and pressure"
                        + " balance the load.");
    }

    @Test
    void whatIsMissingIsNamed() {
        TrialItem noGrade = TrialItem.of("post", 200, 200, 500).ungraded(Point.ofMm(100, 100, 0), Face.BOTTOM, "M10");
        TrialItem oddThread = TrialItem.of("mast", 200, 200, 500).fixing(Point.ofMm(100, 100, 0), Face.BOTTOM, "M7");
        TrialItem noMass = Pushed.cabinet(1, "M10").mass(null, null);
        Trial trial = Trial.in(Pushed.body(5000, 8000))
                .rules(Pushed.forward(1))
                .floor("post", noGrade, 950, 950)
                .floor("mast", oddThread, 1950, 950)
                .floor("cabinet", noMass, 2500, 1000);

        assertThat(trial.rows(Pushed.STRENGTH))
                .allMatch(row -> row.verdict() == Verdict.NOT_ASSESSED)
                .extracting(Row::finding)
                .containsExactlyInAnyOrder(
                        "The grade of fixing F1 of Post is not stated.",
                        "The strength of a bolt M7 8.8 (fixing F1 of Mast) is not stated.",
                        "The mass of Cabinet and the centre of mass of Cabinet are not stated.");
    }

    @Test
    void withoutALoadCaseNothingIsAssessed() {
        Trial trial = Trial.in(Pushed.body(5000, 8000)).floor("cabinet", Pushed.cabinet(100, "M10"), 1000, 1000);

        assertThat(row(trial, 0).verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row(trial, 0).finding())
                .isEqualTo("No load case is set: no chosen rule set says by how much the load is pushed.");
    }
}

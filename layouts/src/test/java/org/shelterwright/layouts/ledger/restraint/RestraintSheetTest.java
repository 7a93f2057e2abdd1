package org.shelterwright.layouts.ledger.restraint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.body.Strength;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.layouts.ledger.restraint.RestraintSheet.Group;
import org.shelterwright.layouts.ledger.restraint.RestraintSheet.Line;
import org.shelterwright.layouts.ledger.restraint.RestraintSheet.Loose;
import org.shelterwright.layouts.ledger.restraint.group.Spot;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.trial.Trial;
import org.shelterwright.layouts.trial.TrialItem;

class RestraintSheetTest {
    private static Trial cabinet() {
        return Trial.in(Pushed.body(5000, 8000))
                .rules(Pushed.forward(1))
                .floor("cabinet", Pushed.cabinet(100, "M10"), 1000, 1000);
    }

    private static List<String> millimetres(List<Spot> spots) {
        return spots.stream()
                .map(at -> Math.round(1000 * at.s()) + " " + Math.round(1000 * at.t()))
                .toList();
    }

    private static Group only(Trial trial) {
        List<Group> groups = RestraintSheet.of(trial.scene()).groups();
        assertThat(groups).hasSize(1);
        return groups.get(0);
    }

    /** Pull M L / ΣL² about the front edge, with M = m g (a h − x): 0.2 · 100 g N·m on levers of 550 and 50 mm, two bolts each. */
    @Test
    void aBoltedUnitIsDrawnWithWhereItsForcesAre() {
        Group group = only(cabinet());

        assertThat(group.on()).isEqualTo("the floor");
        assertThat(group.massKg()).isEqualTo(100);
        assertThat(group.centreHeightMm()).isCloseTo(500, within(1e-9));
        assertThat(millimetres(group.outline())).containsExactly("1000 1000", "1600 1400");
        assertThat(millimetres(group.contact()))
                .containsExactlyInAnyOrder("1000 1000", "1600 1000", "1000 1400", "1600 1400");
        assertThat(group.centre().s()).isCloseTo(1.3, within(1e-12));
        assertThat(group.centre().t()).isCloseTo(1.2, within(1e-12));
        assertThat(group.push()).isEqualTo(new Spot(1, 0));
        assertThat(group.governing()).isEqualTo("own case, forward");
        double pull = 0.2 * 100 * Pushed.G * 0.55 / (2 * (0.55 * 0.55 + 0.05 * 0.05));
        Line first = group.fixings().get(0);
        assertThat(millimetres(List.of(Objects.requireNonNull(first.at())))).containsExactly("1050 1050");
        assertThat(first.bolt()).isEqualTo("M10 8.8");
        assertThat(first.into()).isEqualTo("floor grid");
        assertThat(first.pullN()).isCloseTo(pull, within(1e-6));
        assertThat(first.governingPullN()).isCloseTo(pull, within(1e-6));
        assertThat(first.shearN()).isCloseTo(25 * Pushed.G, within(1e-6));
        assertThat(first.governingShear().s()).isCloseTo(25 * Pushed.G, within(1e-6));
        assertThat(first.governingShear().t()).isCloseTo(0, within(1e-6));
        assertThat(first.intoUse()).isCloseTo(pull / 5000 + 25 * Pushed.G / 8000, within(1e-9));
        assertThat(first.boltUse()).isCloseTo(Math.hypot(pull, 25 * Pushed.G / 0.6) / 33_700, within(1e-9));
        assertThat(first.torqueNm()).as("the rules set no preload").isNull();
    }

    /** K F d with K = 0.2, d = 10 mm, F = 0.75 of the lesser of bolt (33.7 kN, ISO 898-1) and what takes it. */
    @Test
    void torqueIsThatOfTheWeakerOfBoltAndHardPoint() {
        Trial weak = cabinet().limit(Figure.PRELOAD_SHARE, 0.75).limit(Figure.TORQUE_FACTOR, 0.2);
        Trial strong = Trial.in(Pushed.body(50_000, 8000))
                .rules(Pushed.forward(1))
                .limit(Figure.PRELOAD_SHARE, 0.75)
                .limit(Figure.TORQUE_FACTOR, 0.2)
                .floor("cabinet", Pushed.cabinet(100, "M10"), 1000, 1000);

        assertThat(only(weak).fixings())
                .allSatisfy(line -> assertThat(line.torqueNm()).isCloseTo(7.5, within(1e-9)));
        assertThat(only(strong).fixings())
                .allSatisfy(line -> assertThat(line.torqueNm()).isCloseTo(50.55, within(1e-9)));
        assertThat(only(cabinet().limit(Figure.PRELOAD_SHARE, 0.75))
                        .fixings()
                        .get(0)
                        .torqueNm())
                .isNull();
    }

    /** Under EN 12195-1 the rear bolts are pulled by braking and the front ones by a push rearward, which is weaker. */
    @Test
    void everyFixingStandsInItsOwnWorstCase() {
        Group group = only(Trial.in(Pushed.body(5000, 8000))
                .rules("road-eu")
                .floor("cabinet", Pushed.cabinet(100, "M10"), 1000, 1000));

        Line rear = group.fixings().get(0);
        Line front = group.fixings().get(2);
        assertThat(rear.under()).endsWith("forward");
        assertThat(front.under()).doesNotEndWith("forward");
        assertThat(rear.intoUse()).isGreaterThan(front.intoUse());
        assertThat(front.pullN()).isGreaterThan(front.governingPullN());
    }

    @Test
    void whatHangsOnAWallOrUnderTheRoofIsMeasuredFromThere() {
        TrialItem cupboard = TrialItem.of("cupboard", 300, 600, 500)
                .on(Surface.WALL)
                .mass(20.0, Point.ofMm(120, 300, 250))
                .fixing(Point.ofMm(0, 50, 450), Face.REAR, "M10")
                .fixing(Point.ofMm(0, 550, 450), Face.REAR, "M10");
        TrialItem lamp = TrialItem.of("lamp", 600, 200, 100)
                .on(Surface.ROOF)
                .mass(8.0, Point.ofMm(300, 100, 60))
                .fixing(Point.ofMm(100, 100, 100), Face.TOP, "M10")
                .fixing(Point.ofMm(500, 100, 100), Face.TOP, "M10");
        Strength strength = new Strength(5000.0, 5000.0, null);
        List<Group> groups = RestraintSheet.of(Trial.in(Pushed.body(1, 1)
                                .drillZone("backing", Face.REAR, Box.ofMm(0, 0, 0, 0, 2000, 2000), strength)
                                .grid("roof rail", Face.TOP, Point.ofMm(100, 100, 2000), Axis.X, 50, 70, 1, strength))
                        .rules(Pushed.forward(1))
                        .put("cupboard", cupboard, Trial.at(Surface.WALL, 0, 500, 900, QuarterTurn.R0))
                        .put("lamp", lamp, Trial.at(Surface.ROOF, 1000, 0, 1900, QuarterTurn.R0))
                        .scene())
                .groups();

        assertThat(groups).extracting(Group::on).containsExactly("the rear wall", "the roof");
        assertThat(groups.get(0).centreHeightMm()).isCloseTo(120, within(1e-9));
        assertThat(millimetres(groups.get(0).outline())).containsExactly("500 900", "1100 1400");
        assertThat(groups.get(0).push()).as("braking presses along no wall").isEqualTo(new Spot(0, -1));
        assertThat(groups.get(1).centreHeightMm()).isCloseTo(40, within(1e-9));
    }

    @Test
    void whatStandsOnAUnitNamesIt() {
        TrialItem host = Pushed.cabinet(100, "M10").support("top", Rect.ofMm(0, 0, 600, 400), 1000, false, 100.0);
        TrialItem box = TrialItem.of("box", 300, 300, 200)
                .on(Surface.ON_UNIT)
                .fixing(Point.ofMm(50, 50, 0), Face.BOTTOM, "M10")
                .fixing(Point.ofMm(250, 250, 0), Face.BOTTOM, "M10");
        List<Group> groups = RestraintSheet.of(Trial.in(Pushed.body(5000, 8000))
                        .rules(Pushed.forward(1))
                        .floor("cabinet", host, 1000, 1000)
                        .put("box", box, Trial.on("cabinet", 1150, 1050, 1000))
                        .scene())
                .groups();

        assertThat(groups).extracting(Group::on).containsExactly("the floor", "Cabinet");
        assertThat(groups.get(0).massKg()).as("with what it carries").isEqualTo(110);
    }

    @Test
    void whatIsNotKnownOrNotHeldHasNoForces() {
        TrialItem noGrade = TrialItem.of("post", 200, 200, 500).ungraded(Point.ofMm(100, 100, 0), Face.BOTTOM, "M10");
        TrialItem single = TrialItem.of("mast", 200, 200, 500)
                .mass(20.0, Point.ofMm(100, 150, 250))
                .fixing(Point.ofMm(100, 100, 0), Face.BOTTOM, "M10");
        Group unknown =
                only(Trial.in(Pushed.body(5000, 8000)).rules(Pushed.forward(1)).floor("post", noGrade, 950, 950));
        Group unheld = only(
                Trial.in(Pushed.body(5000, 8000)).rules(Pushed.forward(0.1)).floor("mast", single, 950, 950));

        assertThat(unknown.missing()).containsExactly("the grade of fixing F1 of Post");
        assertThat(unknown.governing()).isEmpty();
        assertThat(unknown.push()).isNull();
        assertThat(unknown.fixings()).isEmpty();
        assertThat(unheld.governing()).isEqualTo("own case, forward");
        assertThat(unheld.push()).isEqualTo(new Spot(0.1, 0));
        assertThat(unheld.fixings()).isEmpty();
    }

    @Test
    void looseUnitsAreListedWithTheirPushAndHold() {
        TrialItem crate = TrialItem.of("crate", 600, 400, 300)
                .mass(40.0, Point.ofMm(300, 200, 150))
                .roadHold(900);
        Trial trial = cabinet().floor("crate", crate, 2000, 1000);

        List<Loose> loose = RestraintSheet.of(trial.scene()).loose();

        assertThat(loose).hasSize(1);
        assertThat(loose.get(0).pushN()).isCloseTo(40 * Pushed.G, within(1e-9));
        assertThat(loose.get(0).under()).isEqualTo("own case, forward");
        assertThat(loose.get(0).holdN()).isEqualTo(900.0);
        assertThat(RestraintSheet.of(Trial.in(Pushed.body(1, 1))
                                .floor("crate", crate, 2000, 1000)
                                .scene())
                        .loose())
                .as("without a load case")
                .isEmpty();
    }
}

package org.shelterwright.layouts.ledger.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.item.ItemKind;
import org.shelterwright.catalog.item.MovablePart;
import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.trial.Trial;
import org.shelterwright.layouts.trial.TrialBody;
import org.shelterwright.layouts.trial.TrialItem;

/** Walkways, ways out, exits, headroom and reach. */
class WayLimitsTest {
    private final TrialBody body = TrialBody.of(4000, 2000, 2000).rearDoor(600, 1400);
    private final TrialItem desk = TrialItem.of("desk", 700, 1200, 750)
            .solid(Box.ofMm(0, 0, 720, 700, 1200, 750))
            .zone(Purpose.SEAT, Box.ofMm(300, 300, 0, 1300, 900, 1400));
    private final TrialItem bank = TrialItem.of("bank", 500, 700, 1500);
    private final TrialItem rack =
            TrialItem.of("rack", 800, 600, 1800).zone(Purpose.SERVICE, Box.ofMm(800, 0, 0, 1500, 600, 1900));

    private static Trial ruled(TrialBody body) {
        return Trial.in(body)
                .limit(Figure.WALKWAY_WIDTH, 500)
                .limit(Figure.WALKWAY_HEADROOM, 1900)
                .limit(Figure.STEP_HEIGHT, 50)
                .limit(Figure.EXIT_WIDTH, 600)
                .limit(Figure.EXIT_COUNT, 2)
                .limit(Figure.SEAT_HEADROOM, 1400)
                .limit(Figure.REACH_HIGHEST, 1800);
    }

    private static Row row(List<Row> rows, String title) {
        return rows.stream()
                .filter(row -> row.title().equals(title))
                .findFirst()
                .orElseThrow();
    }

    /** A desk at the front wall behind two banks that leave a gap between them. */
    private Trial behindGap(int gapMm) {
        return ruled(body)
                .put("desk", desk, Trial.onFloor(3300, 400, QuarterTurn.R180))
                .floor("right", bank, 1000, 0)
                .floor("left", TrialItem.of("other", 500, 1300 - gapMm, 1500), 1000, 700 + gapMm);
    }

    @Test
    void theRowTellsTheWidestWayExactly() {
        Row row = row(behindGap(520).rows(new Walkways()), "Way to Desk: seat 0");

        assertThat(row.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(row.demand()).isEqualTo(500.0);
        assertThat(row.capacity()).isEqualTo(520.0);
        assertThat(row.finding()).isEqualTo("The way to the seat zone \"seat 0\" of Desk is 520 mm wide.");
        assertThat(row.source().text()).isEqualTo("brief trial, access.walkway-width");
    }

    @Test
    void anExactFitHolds() {
        assertThat(row(behindGap(500).rows(new Walkways()), "Way to Desk: seat 0")
                        .verdict())
                .isEqualTo(Verdict.CLOSE);
    }

    @Test
    void aNarrowPlaceIsNamedWithItsNeighbours() {
        Row row = row(behindGap(480).rows(new Walkways()), "Way to Desk: seat 0");

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.finding())
                .isEqualTo("The way to the seat zone \"seat 0\" of Desk narrows to 480 mm between Right and Left.");
        assertThat(row.mend()).isEqualTo("Move Right at least 20 mm out of the way.");
        assertThat(row.excess()).isEqualTo(20.0);
        assertThat(row.place()).isEqualTo(Box.ofMm(1000, 700, 0, 1500, 1180, 1900));
    }

    @Test
    void aNarrowPlaceAcrossTheBodyNamesWallAndPartsOfTheBody() {
        // given a way along the left wall, past a locker, and one past a wheel arch
        TrialItem locker = TrialItem.of("locker", 500, 1550, 1500);
        TrialBody arched = TrialBody.of(4000, 2000, 2000)
                .rearDoor(0, 2000)
                .intrusion("left wheel arch", Box.ofMm(900, 1900, 0, 1600, 2000, 300));
        Row wall = row(
                ruled(body)
                        .put("desk", desk, Trial.onFloor(3300, 400, QuarterTurn.R180))
                        .floor("locker", locker, 1600, 0)
                        .rows(new Walkways()),
                "Way to Desk: seat 0");
        Row arch = row(
                ruled(arched)
                        .put("desk", desk, Trial.onFloor(3300, 400, QuarterTurn.R180))
                        .floor("locker", locker, 1000, 0)
                        .rows(new Walkways()),
                "Way to Desk: seat 0");

        assertThat(wall.finding()).endsWith("narrows to 450 mm between Locker and the left wall.");
        assertThat(arch.finding()).endsWith("narrows to 350 mm between Locker and left wheel arch.");
        assertThat(wall.place()).isEqualTo(Box.ofMm(1600, 1550, 0, 2100, 2000, 1900));
    }

    @Test
    void aNarrowPlaceAlongTheBodyIsNamedToo() {
        // given a side door behind which two banks leave 400 mm along x
        TrialBody side = TrialBody.of(4000, 2000, 2000)
                .opening("side", Opening.Kind.DOOR, Face.RIGHT, Box.ofMm(0, 0, 0, 4000, 0, 1900), true, null);
        Row row = row(
                ruled(side)
                        .put("desk", desk, Trial.onFloor(1000, 1300, QuarterTurn.R270))
                        .floor("rear", TrialItem.of("b1", 1400, 300, 1500), 0, 200)
                        .floor("front", TrialItem.of("b2", 2200, 300, 1500), 1800, 200)
                        .rows(new Walkways()),
                "Way to Desk: seat 0");

        assertThat(row.finding()).endsWith("narrows to 400 mm between Rear and Front.");
        assertThat(row.place()).isEqualTo(Box.ofMm(1400, 200, 0, 1800, 500, 1900));
    }

    @Test
    void noWayAtAllSaysSo() {
        Row row = row(behindGap(0).rows(new Walkways()), "Way to Desk: seat 0");

        assertThat(row.capacity()).isZero();
        assertThat(row.finding()).isEqualTo("There is no way from a door to the seat zone \"seat 0\" of Desk.");
        assertThat(row.mend()).isEqualTo("Free a way of 500 mm to it.");
    }

    @Test
    void aDoorMayBeTheNarrowPlace() {
        TrialBody narrow = TrialBody.of(4000, 2000, 2000).rearDoor(600, 1050);

        Row row = row(
                ruled(narrow)
                        .put("desk", desk, Trial.onFloor(3300, 400, QuarterTurn.R180))
                        .rows(new Walkways()),
                "Way to Desk: seat 0");

        assertThat(row.capacity()).isEqualTo(450.0);
        assertThat(row.place()).isEqualTo(Box.ofMm(0, 600, 0, 0, 1050, 1900));
    }

    @Test
    void lowThingsAreSteppedOverAndHighOnesPassedUnder() {
        TrialItem sill = TrialItem.of("sill", 100, 2000, 50);
        TrialItem duct = TrialItem.of("duct", 300, 2000, 100).on(Surface.ROOF);
        Trial passable = ruled(body)
                .put("desk", desk, Trial.onFloor(3300, 400, QuarterTurn.R180))
                .floor("sill", sill, 1000, 0)
                .put("duct", duct, Trial.at(Surface.ROOF, 1500, 0, 1900, QuarterTurn.R0));
        Trial tooHigh = ruled(body)
                .put("desk", desk, Trial.onFloor(3300, 400, QuarterTurn.R180))
                .floor("sill", TrialItem.of("sill", 100, 2000, 51), 1000, 0);
        Trial tooLow = ruled(body)
                .put("desk", desk, Trial.onFloor(3300, 400, QuarterTurn.R180))
                .put("duct", duct, Trial.at(Surface.ROOF, 1500, 0, 1899, QuarterTurn.R0));

        assertThat(row(passable.rows(new Walkways()), "Way to Desk: seat 0").verdict())
                .isEqualTo(Verdict.MET);
        assertThat(row(tooHigh.rows(new Walkways()), "Way to Desk: seat 0").capacity())
                .isZero();
        assertThat(row(tooLow.rows(new Walkways()), "Way to Desk: seat 0").capacity())
                .isZero();
    }

    @Test
    void aLooseSeatIsPushedAsideAndAFixedOneIsNot() {
        TrialItem loose = TrialItem.of("stool", 400, 500, 500).kind(ItemKind.SEAT);
        TrialItem fixed =
                TrialItem.of("bench", 400, 500, 500).kind(ItemKind.SEAT).bolted();

        Row pushed = row(behindGap(500).floor("stool", loose, 1050, 700).rows(new Walkways()), "Way to Desk: seat 0");
        Row barred = row(behindGap(500).floor("bench", fixed, 1050, 700).rows(new Walkways()), "Way to Desk: seat 0");

        assertThat(pushed.capacity()).isEqualTo(500.0);
        assertThat(barred.capacity()).isZero();
    }

    @Test
    void serviceZonesOnTheFloorAreReachedAndThoseAboveATopAreNot() {
        TrialItem instrument =
                TrialItem.of("instrument", 300, 300, 300).zone(Purpose.SERVICE, Box.ofMm(300, 0, 0, 600, 300, 300));
        List<Row> rows = ruled(body)
                .floor("rack", rack, 2000, 0)
                .put("instrument", instrument, Trial.at(Surface.FLOOR, 100, 1600, 800, QuarterTurn.R0))
                .rows(new Walkways());

        assertThat(rows.stream().map(Row::title))
                .containsExactlyInAnyOrder("Headroom of the body", "Way to Rack: service 0");
    }

    @Test
    void aZoneOutsideTheBodyIsNotWalkedToInside() {
        List<Row> rows = ruled(body)
                .put("rack", rack, Trial.onFloor(0, 700, QuarterTurn.R180))
                .rows(new Walkways());

        assertThat(rows.stream().map(Row::title)).containsExactly("Headroom of the body");
    }

    @Test
    void aBodyLowerThanTheHeadroomIsBroken() {
        Row row = ruled(TrialBody.of(4000, 2000, 1850).rearDoor(600, 1400))
                .floor("crate", TrialItem.of("crate", 100, 100, 100), 0, 0)
                .rows(new Walkways())
                .get(0);

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.finding()).isEqualTo("The body is 1850 mm high inside.");
        assertThat(row.mend()).isEqualTo("Use a higher body, or set a lower access.walkway-headroom in the brief.");
    }

    @Test
    void aBodyWithoutADoorHasNoWays() {
        Row row = row(
                ruled(TrialBody.of(4000, 2000, 2000)).floor("desk", desk, 0, 0).rows(new Walkways()),
                "Way to Desk: seat 0");

        assertThat(row.finding())
                .isEqualTo("The body has no door, so there is no way to the seat zone \"seat 0\" of Desk.");
        assertThat(row.mend()).isEqualTo("Give the body a door.");
    }

    @Test
    void figuresThatAreNotSetAreAskedFor() {
        Trial bare = Trial.in(body).floor("desk", desk, 0, 0);

        assertUnset(bare.rows(new Walkways()), Figure.WALKWAY_WIDTH);
        assertUnset(bare.limit(Figure.WALKWAY_WIDTH, 500).rows(new Walkways()), Figure.WALKWAY_HEADROOM);
        assertUnset(bare.rows(new WayOut()), Figure.EXIT_WIDTH);
        assertUnset(bare.rows(new ExitCount()), Figure.EXIT_COUNT);
        assertUnset(bare.rows(new ExitSize()), Figure.EXIT_WIDTH);
        assertUnset(bare.rows(new SeatHeadroom()), Figure.SEAT_HEADROOM);
        assertUnset(bare.limit(Figure.EXIT_COUNT, 2).rows(new ExitCount()), Figure.EXIT_WIDTH);
        assertUnset(bare.limit(Figure.EXIT_WIDTH, 600).rows(new ExitCount()), Figure.WALKWAY_HEADROOM);
        assertUnset(bare.rows(new WayOut()), Figure.WALKWAY_HEADROOM);
    }

    private static void assertUnset(List<Row> rows, Figure figure) {
        assertThat(rows).singleElement().satisfies(row -> {
            assertThat(row.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
            assertThat(row.finding())
                    .isEqualTo("No value is set for \"" + figure.meaning() + "\" (" + figure.id() + ").");
            assertThat(row.mend())
                    .isEqualTo(
                            "Choose a rule set that sets " + figure.id() + ", or set it in the limits of the brief.");
        });
    }

    @Test
    void theWayOutCountsOpenedDrawers() {
        // given a chest whose drawer, when out, leaves 350 mm of the 900 mm between it and the wall
        TrialItem chest = TrialItem.of("chest", 400, 1100, 800)
                .movable("drawer", MovablePart.Kind.DRAWER, Box.ofMm(0, 1100, 0, 400, 1650, 700), "latch");
        Trial trial = ruled(body)
                .put("desk", desk, Trial.onFloor(3300, 400, QuarterTurn.R180))
                .floor("chest", chest, 1000, 0);

        Row way = trial.rows(new WayOut()).get(0);
        Row walk = row(trial.rows(new Walkways()), "Way to Desk: seat 0");

        assertThat(walk.capacity()).isEqualTo(800.0);
        assertThat(way.capacity()).isEqualTo(350.0);
        assertThat(way.demand()).isEqualTo(600.0);
        assertThat(way.title()).isEqualTo("Way out from Desk: seat 0");
        assertThat(way.state()).isEqualTo("on station, drawers out");
        assertThat(way.finding())
                .startsWith("The way out from the seat zone \"seat 0\" of Desk narrows to 350 mm with the drawers out");
        assertThat(way.mend()).isEqualTo("Widen it there by at least 250 mm.");
    }

    @Test
    void aDoorOfARackIsShutBehindYouAndADrawerIsNot() {
        for (MovablePart.Kind kind : MovablePart.Kind.values()) {
            TrialItem chest = TrialItem.of("chest", 400, 1100, 800)
                    .movable("part", kind, Box.ofMm(0, 1100, 0, 400, 1650, 700), "latch");
            Row way = ruled(body)
                    .put("desk", desk, Trial.onFloor(3300, 400, QuarterTurn.R180))
                    .floor("chest", chest, 1000, 0)
                    .rows(new WayOut())
                    .get(0);
            boolean shut = kind == MovablePart.Kind.DOOR || kind == MovablePart.Kind.LID;
            assertThat(way.capacity()).as("%s", kind).isEqualTo(shut ? 800.0 : 350.0);
        }
    }

    @Test
    void noExitAndNoWayOutSaySo() {
        Row noExit = ruled(TrialBody.of(4000, 2000, 2000))
                .floor("desk", desk, 0, 0)
                .rows(new WayOut())
                .get(0);
        Row noWay = behindGap(0).rows(new WayOut()).get(0);

        assertThat(noExit.finding())
                .isEqualTo("The body has no exit, so there is no way out from the seat zone \"seat 0\" of Desk.");
        assertThat(noExit.mend()).isEqualTo("Mark which openings of the body are exits.");
        assertThat(noWay.finding())
                .isEqualTo("There is no way out from the seat zone \"seat 0\" of Desk with the drawers out.");
        assertThat(noWay.mend()).isEqualTo("Free a way of 600 mm to an exit.");
    }

    @Test
    void withoutWorkPlacesTheWaysOutHold() {
        Trial trial = ruled(body).floor("bank", bank, 0, 0);

        assertThat(trial.rows(new WayOut()).get(0).finding()).isEqualTo("No unit has a work place.");
        assertThat(trial.rows(new ExitCount()).get(0).verdict()).isEqualTo(Verdict.MET);
        assertThat(trial.rows(new SeatHeadroom()).get(0).verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void oneWorkPlaceNeedsOneExitAndTwoNeedTheSetNumber() {
        Trial one = ruled(body).put("one", desk, Trial.onFloor(3300, 400, QuarterTurn.R180));
        Row single = one.rows(new ExitCount()).get(0);
        Row two = one.floor("two", desk, 800, 400).rows(new ExitCount()).get(0);

        assertThat(single.demand()).isEqualTo(1.0);
        assertThat(single.capacity()).isEqualTo(1.0);
        assertThat(single.finding())
                .isEqualTo("1 work place inside; from One 1 exit is reached at the width of a way out.");
        assertThat(two.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(two.demand()).isEqualTo(2.0);
        assertThat(two.mend()).isEqualTo("Free the way to another exit, or mark or add one in the body.");
    }

    @Test
    void exitsCountOnlyWhereTheyAreReached() {
        TrialBody twoExits = TrialBody.of(4000, 2000, 2000)
                .rearDoor(600, 1400)
                .opening("hatch", Opening.Kind.HATCH, Face.LEFT, Box.ofMm(200, 2000, 0, 900, 2000, 1500), true, null);
        Trial trial = ruled(twoExits)
                .put("one", desk, Trial.onFloor(3300, 400, QuarterTurn.R180))
                .put("two", desk, Trial.onFloor(1500, 700, QuarterTurn.R0));
        Row both = trial.rows(new ExitCount()).get(0);
        Row barred = trial.floor("bank", TrialItem.of("wide", 1000, 400, 1500), 0, 1600)
                .rows(new ExitCount())
                .get(0);

        assertThat(both.capacity()).isEqualTo(2.0);
        assertThat(both.verdict()).isEqualTo(Verdict.MET);
        assertThat(barred.capacity()).isEqualTo(1.0);
        assertThat(barred.finding())
                .isEqualTo("2 work places inside; from One 1 exit is reached at the width of a way out.");
    }

    @Test
    void anExitThroughTheRoofIsReachedByStandingUnderIt() {
        TrialBody roof = TrialBody.of(4000, 2000, 2000)
                .opening(
                        "roof hatch",
                        Opening.Kind.HATCH,
                        Face.TOP,
                        Box.ofMm(500, 500, 2000, 1150, 1300, 2000),
                        true,
                        null);

        Row way = ruled(roof)
                .put("desk", desk, Trial.onFloor(3300, 400, QuarterTurn.R180))
                .rows(new WayOut())
                .get(0);
        Row size = ruled(roof).floor("bank", bank, 0, 0).rows(new ExitSize()).get(0);

        assertThat(way.capacity()).isEqualTo(650.0);
        assertThat(size.capacity()).isEqualTo(650.0);
    }

    @Test
    void everyExitIsMeasuredAcrossItsWall() {
        TrialBody exits = TrialBody.of(4000, 2000, 2000)
                .rearDoor(600, 1400)
                .opening("side", Opening.Kind.DOOR, Face.LEFT, Box.ofMm(200, 2000, 0, 750, 2000, 1900), true, null)
                .opening("vent", Opening.Kind.HATCH, Face.LEFT, Box.ofMm(900, 2000, 0, 950, 2000, 50), false, null);
        List<Row> rows = ruled(exits).floor("bank", bank, 2000, 0).rows(new ExitSize());

        assertThat(rows).hasSize(2);
        assertThat(row(rows, "Width of rear door").capacity()).isEqualTo(800.0);
        assertThat(row(rows, "Width of side").verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row(rows, "Width of side").finding()).isEqualTo("The exit side is 550 mm wide.");
        assertThat(row(rows, "Width of side").mend()).isEqualTo("Widen it by 50 mm, or use another body.");
    }

    @Test
    void aBodyThatStatesNoExitIsNotAssessed() {
        Row row = ruled(TrialBody.of(4000, 2000, 2000))
                .floor("bank", bank, 0, 0)
                .rows(new ExitSize())
                .get(0);

        assertThat(row.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row.finding()).isEqualTo("The body states no exit.");
    }

    @Test
    void headroomAtAWorkPlaceEndsAtWhatHangsOverIt() {
        TrialItem cupboard = TrialItem.of("cupboard", 400, 600, 500).on(Surface.ROOF);
        TrialBody ducted = TrialBody.of(4000, 2000, 2000)
                .rearDoor(600, 1400)
                .intrusion("duct", Box.ofMm(0, 0, 1800, 4000, 1000, 2000));
        Trial free = ruled(body).floor("desk", desk, 0, 0);
        Trial under = ruled(body)
                .floor("desk", desk, 0, 0)
                .put("cupboard", cupboard, Trial.at(Surface.ROOF, 1299, 0, 1370, QuarterTurn.R0));
        Trial beside = ruled(body)
                .floor("desk", desk, 0, 0)
                .put("cupboard", cupboard, Trial.at(Surface.ROOF, 1300, 0, 1370, QuarterTurn.R0));

        assertThat(free.rows(new SeatHeadroom()).get(0).capacity()).isEqualTo(2000.0);
        assertThat(free.rows(new SeatHeadroom()).get(0).finding())
                .isEqualTo("At the seat zone \"seat 0\" of Desk 2000 mm above the floor are free, up to the roof.");
        assertThat(beside.rows(new SeatHeadroom()).get(0).verdict()).isEqualTo(Verdict.MET);
        Row row = under.rows(new SeatHeadroom()).get(0);
        assertThat(row.capacity()).isEqualTo(1370.0);
        assertThat(row.units()).containsExactly("desk", "cupboard");
        assertThat(row.mend()).isEqualTo("Move Cupboard at least 30 mm up, or away from there.");
        assertThat(ruled(ducted)
                        .floor("desk", desk, 0, 0)
                        .rows(new SeatHeadroom())
                        .get(0)
                        .capacity())
                .isEqualTo(1800.0);
    }

    @Test
    void aLowRoofOverAWorkPlaceSendsItElsewhere() {
        Row row = ruled(TrialBody.of(4000, 2000, 1300).rearDoor(600, 1400))
                .floor("desk", desk, 0, 0)
                .rows(new SeatHeadroom())
                .get(0);

        assertThat(row.mend()).isEqualTo("Find another place for Desk.");
    }

    @Test
    void chairsAndTheDeskItselfDoNotLimitItsHeadroom() {
        TrialItem chair = TrialItem.of("chair", 450, 450, 900).kind(ItemKind.SEAT);

        Row row = ruled(body)
                .floor("desk", desk, 0, 0)
                .floor("chair", chair, 800, 350)
                .rows(new SeatHeadroom())
                .get(0);

        assertThat(row.capacity()).isEqualTo(2000.0);
    }

    @Test
    void theHighestPortOfAServicedUnitGoverns() {
        TrialItem tall = TrialItem.of("tall", 300, 300, 1950)
                .zone(Purpose.SERVICE, Box.ofMm(300, 0, 0, 1000, 300, 1900))
                .port("mains", Point.ofMm(0, 100, 400))
                .port("aerial", Point.ofMm(0, 100, 1840))
                .port("feed", Point.ofMm(0, 100, 1900));
        TrialItem hidden = TrialItem.of("hidden", 300, 300, 1950).port("aerial", Point.ofMm(0, 100, 1940));
        List<Row> rows = ruled(body)
                .floor("tall", tall, 2000, 0)
                .floor("hidden", hidden, 2000, 500)
                .rows(new HighestControl());

        assertThat(rows).hasSize(2);
        assertThat(rows.get(0).demand()).isEqualTo(1900.0);
        assertThat(rows.get(0).finding()).isEqualTo("The port \"feed\" of Tall lies 1900 mm above the floor.");
        assertThat(rows.get(0).mend()).isEqualTo("Mount Tall at least 100 mm lower.");
        assertThat(rows.get(1).title()).isEqualTo("Reach to aerial of Tall");
    }

    @Test
    void aReachablePortIsMetAndShown() {
        TrialItem low = TrialItem.of("low", 300, 300, 1950)
                .zone(Purpose.SERVICE, Box.ofMm(300, 0, 0, 1000, 300, 1900))
                .port("mains", Point.ofMm(0, 100, 400));
        List<Row> rows = ruled(body).floor("low", low, 2000, 0).rows(new HighestControl());
        Row unset = Trial.in(body)
                .floor("low", low, 2000, 0)
                .rows(new HighestControl())
                .get(0);

        assertThat(rows).singleElement().satisfies(row -> {
            assertThat(row.verdict()).isEqualTo(Verdict.MET);
            assertThat(row.demand()).isEqualTo(400.0);
        });
        assertThat(unset.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(ruled(body)
                        .floor("bank", bank, 0, 0)
                        .rows(new HighestControl())
                        .get(0)
                        .finding())
                .isEqualTo("No unit with a service zone states a port.");
    }
}

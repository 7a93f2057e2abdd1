package org.shelterwright.layouts.ledger.fit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.item.Presence;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.layout.Pin;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.trial.Trial;
import org.shelterwright.layouts.trial.TrialBody;
import org.shelterwright.layouts.trial.TrialItem;

/** Limits of where one unit is: inside, clear of the body's parts, surface, turn, contact, height, all placed. */
class PlaceLimitsTest {
    private final TrialBody body = TrialBody.of(4000, 2000, 2000);
    private final TrialItem rack = TrialItem.of("rack", 800, 600, 1800);
    private final TrialItem panel =
            TrialItem.of("panel", 200, 600, 400).on(Surface.WALL).wallHeights(900, 1400);

    @Test
    void aUnitMayTouchEveryWallButNotReachBeyond() {
        Trial exact = Trial.in(body).floor("one", TrialItem.of("cube", 4000, 2000, 2000), 0, 0);
        Row beyond =
                Trial.in(body).floor("one", rack, 3238, 0).rows(new Inside()).get(0);

        assertThat(exact.rows(new Inside()).get(0).verdict()).isEqualTo(Verdict.MET);
        assertThat(exact.rows(new Inside()).get(0).finding()).isEqualTo("Every unit lies inside the body.");
        assertThat(beyond.demand()).isEqualTo(38.0);
        assertThat(beyond.finding()).isEqualTo("One reaches 38 mm beyond the front wall.");
        assertThat(beyond.mend()).isEqualTo("Move One 38 mm to the rear.");
        assertThat(beyond.place()).isEqualTo(Box.ofMm(3238, 0, 0, 4038, 600, 1800));
    }

    @Test
    void reachingBeyondTwoWallsNamesTheWorseAndMendsBoth() {
        Place place = Place.onFloor(Pose.at(Point.ofMm(-5, -20, 0)));

        Row row = Trial.in(body).put("one", rack, place).rows(new Inside()).get(0);

        assertThat(row.finding()).isEqualTo("One reaches 20 mm beyond the right wall.");
        assertThat(row.mend()).isEqualTo("Move One 5 mm forward and 20 mm to the left.");
    }

    @Test
    void aUnitThatIsTooLongSaysSo() {
        Row row = Trial.in(body)
                .floor("one", TrialItem.of("long", 1000, 2100, 500), 0, 0)
                .rows(new Inside())
                .get(0);

        assertThat(row.mend())
                .isEqualTo("It is 100 mm too long for the body as it is turned: turn One or take a larger body.");
    }

    @Test
    void onlySolidsCountForInsideNotTheCornerThatASizeLeavesEmpty() {
        TrialItem stepped = TrialItem.of("stepped", 800, 600, 1000)
                .solid(Box.ofMm(0, 0, 0, 400, 600, 1000))
                .solid(Box.ofMm(400, 0, 0, 800, 600, 300), Presence.ON_STATION);

        Row row =
                Trial.in(body).floor("one", stepped, 3300, 0).rows(new Inside()).get(0);

        assertThat(row.demand()).isEqualTo(100.0);
        assertThat(row.state()).isEqualTo("on station");
    }

    @Test
    void aUnitInAWheelArchSaysHowToGetOut() {
        TrialBody arched =
                TrialBody.of(4000, 2000, 2000).intrusion("right wheel arch", Box.ofMm(800, 0, 0, 1700, 250, 300));

        Row touching = Trial.in(arched)
                .floor("one", rack, 0, 0)
                .rows(new ClearOfIntrusions())
                .get(0);
        Row into = Trial.in(arched)
                .floor("one", rack, 40, 0)
                .rows(new ClearOfIntrusions())
                .get(0);

        assertThat(touching.verdict()).isEqualTo(Verdict.MET);
        assertThat(into.finding()).isEqualTo("One stands 40 mm into right wheel arch.");
        assertThat(into.mend()).isEqualTo("Move One at least 40 mm to the rear.");
        assertThat(into.demand()).isEqualTo(40.0);
        assertThat(into.units()).containsExactly("one");
        assertThat(into.place()).isEqualTo(Box.ofMm(800, 0, 0, 1700, 250, 300));
    }

    @Test
    void aUnitWithNoWayOutOfAnArchMustGoElsewhere() {
        TrialBody arched = TrialBody.of(4000, 2000, 2000).intrusion("ramp", Box.ofMm(0, 0, 0, 4000, 2000, 100));

        Row row = Trial.in(arched)
                .floor("one", rack, 0, 0)
                .rows(new ClearOfIntrusions())
                .get(0);

        assertThat(row.mend()).isEqualTo("Find another place for One.");
    }

    @Test
    void aSurfaceThatTheItemDoesNotAllowIsNamed() {
        Row row = Trial.in(body)
                .put("one", rack, Trial.at(Surface.WALL, 0, 0, 0, QuarterTurn.R0))
                .rows(new SurfaceAllowed())
                .get(0);
        Row allowed = Trial.in(body)
                .floor("one", rack, 0, 0)
                .rows(new SurfaceAllowed())
                .get(0);

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.excess()).isEqualTo(1.0);
        assertThat(row.finding()).isEqualTo("One is mounted on a wall, which its item does not allow.");
        assertThat(row.mend()).isEqualTo("Mount it on the floor.");
        assertThat(allowed.verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void aTurnThatTheItemDoesNotAllowIsNamed() {
        TrialItem oneWay = TrialItem.of("rack", 800, 600, 1800).turns(QuarterTurn.R0, QuarterTurn.R180);

        Row row = Trial.in(body)
                .put("one", oneWay, Trial.onFloor(0, 0, QuarterTurn.R90))
                .rows(new TurnAllowed())
                .get(0);
        Row allowed = Trial.in(body)
                .put("one", oneWay, Trial.onFloor(0, 0, QuarterTurn.R180))
                .rows(new TurnAllowed())
                .get(0);

        assertThat(row.finding()).isEqualTo("One is turned by 90°, which its item does not allow.");
        assertThat(row.mend()).isEqualTo("Turn it to 0° and 180°.");
        assertThat(row.demand()).isEqualTo(1.0);
        assertThat(allowed.verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void aUnitOnTheFloorThatFloatsIsMovedDown() {
        Row row = Trial.in(body)
                .put("one", rack, Trial.at(Surface.FLOOR, 0, 0, 12, QuarterTurn.R0))
                .rows(new TouchesSurface())
                .get(0);

        assertThat(row.finding()).isEqualTo("One is mounted on the floor but lies 12 mm off it.");
        assertThat(row.mend()).isEqualTo("Move One 12 mm down.");
        assertThat(row.demand()).isEqualTo(12.0);
    }

    @Test
    void aUnitBelowTheFloorIsMovedUp() {
        Row row = Trial.in(body)
                .put("one", rack, Trial.at(Surface.FLOOR, 0, 0, -3, QuarterTurn.R0))
                .rows(new TouchesSurface())
                .get(0);

        assertThat(row.finding()).isEqualTo("One is mounted on the floor but lies 3 mm beyond it.");
        assertThat(row.mend()).isEqualTo("Move One 3 mm up.");
    }

    @Test
    void theBackOfAUnitOnAWallLiesOnTheWallThatItsTurnNames() {
        // turned by 90°, the back looks to the right; by 180°, to the front; by 270°, to the left
        assertContact(Trial.at(Surface.WALL, 0, 300, 900, QuarterTurn.R0), 0);
        assertContact(Trial.at(Surface.WALL, 500, 0, 900, QuarterTurn.R90), 0);
        assertContact(Trial.at(Surface.WALL, 3800, 300, 900, QuarterTurn.R180), 0);
        assertContact(Trial.at(Surface.WALL, 500, 1800, 900, QuarterTurn.R270), 0);
        assertContact(Trial.at(Surface.WALL, 500, 1790, 900, QuarterTurn.R270), 10);
        assertContact(Trial.at(Surface.WALL, 5, 300, 900, QuarterTurn.R0), 5);
        assertContact(Trial.at(Surface.WALL, 0, 300, 900, QuarterTurn.R180), 3800);
    }

    private void assertContact(Place place, double offMm) {
        Row row = Trial.in(body)
                .put("one", panel, place)
                .rows(new TouchesSurface())
                .get(0);
        assertThat(row.demand()).as("%s", place).isEqualTo(offMm);
        assertThat(row.finding().equals(new TouchesSurface().heldSentence()))
                .as("%s", place)
                .isEqualTo(offMm == 0);
    }

    @Test
    void aUnitUnderTheRoofTouchesIt() {
        TrialItem lamp = TrialItem.of("lamp", 600, 200, 100).on(Surface.ROOF);

        Row touching = Trial.in(body)
                .put("one", lamp, Trial.at(Surface.ROOF, 0, 0, 1900, QuarterTurn.R0))
                .rows(new TouchesSurface())
                .get(0);
        Row off = Trial.in(body)
                .put("one", lamp, Trial.at(Surface.ROOF, 0, 0, 1850, QuarterTurn.R0))
                .rows(new TouchesSurface())
                .get(0);

        assertThat(touching.verdict()).isEqualTo(Verdict.MET);
        assertThat(off.finding()).isEqualTo("One is mounted on the roof but lies 50 mm off it.");
        assertThat(off.mend()).isEqualTo("Move One 50 mm up.");
    }

    @Test
    void aUnitOnAWallHangsWithinItsHeights() {
        Row low = wallAt(860);
        Row high = wallAt(1401);

        assertThat(wallAt(900).verdict()).isEqualTo(Verdict.MET);
        assertThat(wallAt(1400).verdict()).isEqualTo(Verdict.MET);
        assertThat(low.finding()).isEqualTo("The bottom of One hangs 860 mm above the floor, 40 mm too low.");
        assertThat(low.mend()).isEqualTo("Move One 40 mm up.");
        assertThat(low.demand()).isEqualTo(40.0);
        assertThat(high.finding()).isEqualTo("The bottom of One hangs 1401 mm above the floor, 1 mm too high.");
        assertThat(high.mend()).isEqualTo("Move One 1 mm down.");
    }

    private Row wallAt(int z) {
        return Trial.in(body)
                .put("one", panel, Trial.at(Surface.WALL, 0, 300, z, QuarterTurn.R0))
                .rows(new WallHeight())
                .get(0);
    }

    @Test
    void heightsOnAWallDoNotBindElsewhere() {
        Row row =
                Trial.in(body).floor("one", panel, 0, 0).rows(new WallHeight()).get(0);

        assertThat(row.verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void unitsStillToPlaceAreCountedAndNamed() {
        Row row = Trial.in(body)
                .floor("one", rack, 0, 0)
                .toPlace("two", rack)
                .toPlace("three", rack)
                .rows(new AllPlaced())
                .get(0);
        Row none = Trial.in(body).floor("one", rack, 0, 0).rows(new AllPlaced()).get(0);

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.demand()).isEqualTo(2.0);
        assertThat(row.units()).containsExactly("two", "three");
        assertThat(row.finding()).isEqualTo("2 units to place: Two and Three.");
        assertThat(row.mend()).isEqualTo("Find places for them, or take them out of the brief.");
        assertThat(none.verdict()).isEqualTo(Verdict.MET);
        assertThat(none.doesNotApply()).isFalse();
    }

    @Test
    void eachLimitTakesTheRoadPlaceIntoAccount() {
        Trial trial = Trial.in(body)
                .put(
                        "one",
                        rack,
                        Trial.onFloor(0, 0, QuarterTurn.R0),
                        Trial.at(Surface.FLOOR, 3300, 0, 7, QuarterTurn.R0),
                        Pin.NONE);

        assertThat(trial.rows(new Inside()).get(0).state()).isEqualTo("on the road");
        assertThat(trial.rows(new TouchesSurface()).get(0).state()).isEqualTo("on the road");
        assertThat(new Ledger(trial.rows(new TouchesSurface())).worst()).isEqualTo(Verdict.BROKEN);
    }
}

package org.shelterwright.layouts.ledger.access;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.item.ItemKind;
import org.shelterwright.catalog.item.MovablePart;
import org.shelterwright.catalog.item.Presence;
import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.layouts.layout.Pin;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.trial.Trial;
import org.shelterwright.layouts.trial.TrialBody;
import org.shelterwright.layouts.trial.TrialItem;

/** Zones free, inside, apart and uncrossed; doors of the body open; movable parts secured. */
class ZoneLimitsTest {
    private final TrialBody body = TrialBody.of(4000, 2000, 2000).rearDoor(600, 1400);
    private final TrialItem crate = TrialItem.of("crate", 400, 400, 400).on(Surface.FLOOR, Surface.ON_UNIT);
    private final TrialItem rack = TrialItem.of("rack", 800, 600, 1800)
            .zone(Purpose.SERVICE, Box.ofMm(800, 0, 0, 1500, 600, 1900))
            .movable("door", MovablePart.Kind.DOOR, Box.ofMm(800, 0, 500, 1400, 600, 1700), "latch");
    private final TrialItem desk = TrialItem.of("desk", 700, 1200, 750)
            .solid(Box.ofMm(0, 0, 720, 700, 1200, 750))
            .zone(Purpose.SEAT, Box.ofMm(300, 300, 0, 1300, 900, 1400))
            .zone(Purpose.SERVICE, Box.ofMm(0, 0, 750, 700, 1200, 1300))
            .support("top", Rect.ofMm(0, 0, 700, 1200), 750, false, 50.0);

    @Test
    void aZoneMayBeTouchedAndNotEntered() {
        Row touched = Trial.in(body)
                .floor("rack", rack, 0, 0)
                .floor("crate", crate, 1500, 0)
                .rows(new ZonesFree())
                .get(0);
        Row entered = Trial.in(body)
                .floor("rack", rack, 0, 0)
                .floor("crate", crate, 1462, 0)
                .rows(new ZonesFree())
                .get(0);

        assertThat(touched.verdict()).isEqualTo(Verdict.MET);
        assertThat(entered.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(entered.demand()).isEqualTo(38.0);
        assertThat(entered.units()).containsExactly("rack", "crate");
        assertThat(entered.state()).isEqualTo("on station");
        assertThat(entered.place()).isEqualTo(Box.ofMm(1462, 0, 0, 1500, 400, 400));
        assertThat(entered.finding()).isEqualTo("Crate stands 38 mm into the service zone \"service 0\" of Rack.");
        assertThat(entered.mend()).isEqualTo("Move Crate at least 38 mm forward.");
    }

    @Test
    void theOwnerMayComeSecondInTheBrief() {
        Row row = Trial.in(body)
                .floor("crate", crate, 1462, 0)
                .floor("rack", rack, 0, 0)
                .rows(new ZonesFree())
                .get(0);

        assertThat(row.units()).containsExactly("rack", "crate");
    }

    @Test
    void theSweepOfADoorIsAZoneOnStation() {
        TrialItem shelf = TrialItem.of("shelf", 400, 400, 400).on(Surface.WALL);
        TrialItem closed = TrialItem.of("rack", 800, 600, 1800)
                .movable("door", MovablePart.Kind.DOOR, Box.ofMm(800, 0, 500, 1400, 600, 1700), "latch");

        Row row = Trial.in(body)
                .floor("rack", closed, 0, 0)
                .put("shelf", shelf, Trial.at(Surface.WALL, 1300, 0, 1690, QuarterTurn.R90))
                .rows(new ZonesFree())
                .get(0);

        assertThat(row.finding()).isEqualTo("Shelf stands 10 mm into the way of \"door\" of Rack.");
    }

    @Test
    void zonesBindWhenTheyAreThere() {
        TrialItem roadZone = TrialItem.of("rack", 800, 600, 1800)
                .zone(Purpose.AIR, Box.ofMm(800, 0, 0, 1500, 600, 1900), Presence.ALWAYS);
        Trial trial = Trial.in(body)
                .floor("rack", roadZone, 0, 0)
                .put(
                        "crate",
                        crate,
                        Trial.onFloor(2500, 0, QuarterTurn.R0),
                        Trial.onFloor(1400, 0, QuarterTurn.R0),
                        Pin.NONE);
        Trial stationZone = Trial.in(body)
                .floor("rack", rack, 0, 0)
                .put(
                        "crate",
                        crate,
                        Trial.onFloor(2500, 0, QuarterTurn.R0),
                        Trial.onFloor(1400, 0, QuarterTurn.R0),
                        Pin.NONE);

        assertThat(trial.rows(new ZonesFree()).get(0).state()).isEqualTo("on the road");
        assertThat(stationZone.rows(new ZonesFree()).get(0).verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void whatStandsOnATopMayStandInItsServiceZone() {
        TrialItem box = TrialItem.of("box", 300, 300, 300).on(Surface.ON_UNIT).stacking(20);
        Row row = Trial.in(body)
                .floor("desk", desk, 0, 0)
                .put("lower", box, Trial.on("desk", 0, 0, 750))
                .put("upper", box, Trial.on("lower", 0, 0, 1050))
                .rows(new ZonesFree())
                .get(0);

        assertThat(row.verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void whatStandsOnATopBlocksItsLidAndHangingUnitsItsService() {
        TrialItem lidded = TrialItem.of("chest", 600, 600, 500)
                .movable("lid", MovablePart.Kind.LID, Box.ofMm(0, 0, 500, 600, 600, 1000), "catch")
                .stacking(50);
        TrialItem cupboard = TrialItem.of("cupboard", 300, 600, 400).on(Surface.WALL);

        Row lid = Trial.in(body)
                .floor("chest", lidded, 0, 0)
                .put("crate", crate, Trial.on("chest", 0, 0, 500))
                .rows(new ZonesFree())
                .get(0);
        Row service = Trial.in(body)
                .floor("desk", desk, 0, 0)
                .put("cupboard", cupboard, Trial.at(Surface.WALL, 0, 0, 1200, QuarterTurn.R0))
                .rows(new ZonesFree())
                .get(0);

        assertThat(lid.finding()).isEqualTo("Crate stands 400 mm into the way of \"lid\" of Chest.");
        assertThat(service.finding()).isEqualTo("Cupboard stands 100 mm into the service zone \"service 1\" of Desk.");
    }

    @Test
    void aSeatMayStandInASeatZoneAndNothingElse() {
        TrialItem chair = TrialItem.of("chair", 450, 450, 900).kind(ItemKind.SEAT);

        Row seat = Trial.in(body)
                .floor("desk", desk, 0, 0)
                .floor("chair", chair, 800, 350)
                .rows(new ZonesFree())
                .get(0);
        Row box = Trial.in(body)
                .floor("desk", desk, 0, 0)
                .floor("crate", crate, 800, 350)
                .rows(new ZonesFree())
                .get(0);

        assertThat(seat.verdict()).isEqualTo(Verdict.MET);
        assertThat(box.finding()).isEqualTo("Crate stands 400 mm into the seat zone \"seat 0\" of Desk.");
    }

    @Test
    void aPedestalUnderADeskBlocksTheKnees() {
        TrialItem pedestal = TrialItem.of("pedestal", 500, 400, 600).on(Surface.UNDER_UNIT);

        Row row = Trial.in(body)
                .floor("desk", desk, 0, 0)
                .put("pedestal", pedestal, Trial.under("desk", 0, 200, 120))
                .rows(new ZonesFree())
                .get(0);

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
    }

    @Test
    void aZoneInsideTheBodyHolds() {
        Row row = Trial.in(body)
                .floor("rack", rack, 2500, 0)
                .rows(new ZonesInside())
                .get(0);

        assertThat(row.verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void aZoneThatReachesThroughAWallIsLost() {
        Row row = Trial.in(body)
                .floor("rack", rack, 2600, 0)
                .rows(new ZonesInside())
                .get(0);

        assertThat(row.demand()).isEqualTo(100.0);
        assertThat(row.finding())
                .isEqualTo("The service zone \"service 0\" of Rack reaches 100 mm beyond the front wall.");
        assertThat(row.mend()).isEqualTo("Move Rack away from it by at least 100 mm, or turn it.");
    }

    @Test
    void aZoneInAWheelArchIsLost() {
        TrialBody arched =
                TrialBody.of(4000, 2000, 2000).intrusion("right wheel arch", Box.ofMm(1450, 0, 0, 2400, 250, 300));

        Row row = Trial.in(arched)
                .floor("rack", rack, 0, 0)
                .rows(new ZonesInside())
                .get(0);

        assertThat(row.finding())
                .isEqualTo("The service zone \"service 0\" of Rack reaches 50 mm into right wheel arch.");
    }

    @Test
    void aZoneMayReachOutThroughADoorThatIsAsWide() {
        // the rear door spans y 600 to 1400; turned by 180°, the rack looks to the rear
        assertThat(zoneThroughRear(600).verdict()).isEqualTo(Verdict.MET);
        assertThat(zoneThroughRear(800).verdict()).isEqualTo(Verdict.MET);
        assertThat(zoneThroughRear(599).verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(zoneThroughRear(801).verdict()).isEqualTo(Verdict.BROKEN);
    }

    private Row zoneThroughRear(int y) {
        return Trial.in(body)
                .put("rack", rack, Trial.onFloor(200, y, QuarterTurn.R180))
                .rows(new ZonesInside())
                .get(0);
    }

    @Test
    void aZoneDoesNotReachOutThroughAWindowOrBelowAHatch() {
        assertThat(zoneThrough(Opening.Kind.WINDOW, 0).verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(zoneThrough(Opening.Kind.HATCH, 900).verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(zoneThrough(Opening.Kind.REMOVABLE_PANEL, 0).verdict()).isEqualTo(Verdict.MET);
    }

    private Row zoneThrough(Opening.Kind kind, int sill) {
        TrialBody other = TrialBody.of(4000, 2000, 2000)
                .opening("opening", kind, Face.RIGHT, Box.ofMm(500, 0, sill, 2000, 0, 1900), false, null);
        return Trial.in(other)
                .put("rack", rack, Trial.onFloor(600, 200, QuarterTurn.R270))
                .rows(new ZonesInside())
                .get(0);
    }

    @Test
    void twoWorkPlacesDoNotShareSpace() {
        Row apart = Trial.in(body)
                .floor("one", desk, 0, 0)
                .put("two", desk, Trial.onFloor(1900, 0, QuarterTurn.R180))
                .rows(new SeatsApart())
                .get(0);
        Row close = Trial.in(body)
                .floor("one", desk, 0, 0)
                .put("two", desk, Trial.onFloor(1850, 0, QuarterTurn.R180))
                .rows(new SeatsApart())
                .get(0);

        assertThat(apart.verdict()).isEqualTo(Verdict.MET);
        assertThat(close.demand()).isEqualTo(50.0);
        assertThat(close.finding()).isEqualTo("The seat zones of One and Two overlap by 50 mm.");
        assertThat(close.mend()).isEqualTo("Move One and Two apart by at least 50 mm.");
        assertThat(close.place()).isEqualTo(Box.ofMm(1250, 300, 0, 1300, 900, 1400));
    }

    @Test
    void theZoneOfAChairAtADeskIsThatOfTheDesk() {
        TrialItem chair = TrialItem.of("chair", 450, 450, 900)
                .kind(ItemKind.SEAT)
                .zone(Purpose.SEAT, Box.ofMm(0, 0, 0, 450, 450, 1400));

        Row row = Trial.in(body)
                .floor("desk", desk, 0, 0)
                .floor("chair", chair, 800, 350)
                .rows(new SeatsApart())
                .get(0);

        assertThat(row.verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void aDrawerDoesNotOpenIntoAnExitZone() {
        TrialItem locker =
                TrialItem.of("locker", 400, 900, 1700).zone(Purpose.EXIT, Box.ofMm(400, 0, 0, 1000, 900, 1900));
        TrialItem chest = TrialItem.of("chest", 400, 900, 800)
                .movable("drawer", MovablePart.Kind.DRAWER, Box.ofMm(400, 0, 100, 800, 900, 700), "latch");

        List<Row> rows = Trial.in(body)
                .floor("locker", locker, 0, 0)
                .put("chest", chest, Trial.onFloor(1375, 0, QuarterTurn.R180))
                .rows(new ExitZonesUncrossed());
        List<Row> otherOrder = Trial.in(body)
                .put("chest", chest, Trial.onFloor(1375, 0, QuarterTurn.R180))
                .floor("locker", locker, 0, 0)
                .rows(new ExitZonesUncrossed());
        Row apart = Trial.in(body)
                .floor("locker", locker, 0, 0)
                .put("chest", chest, Trial.onFloor(1400, 0, QuarterTurn.R180))
                .rows(new ExitZonesUncrossed())
                .get(0);

        assertThat(rows).singleElement().satisfies(row -> {
            assertThat(row.demand()).isEqualTo(25.0);
            assertThat(row.finding())
                    .isEqualTo("\"drawer\" of Chest moves 25 mm into the exit zone \"exit 0\" of Locker.");
            assertThat(row.mend()).isEqualTo("Move Chest by at least 25 mm, or turn it.");
        });
        assertThat(otherOrder).isEqualTo(rows);
        assertThat(apart.verdict()).isEqualTo(Verdict.MET);
    }

    private final TrialBody inward = TrialBody.of(4000, 2000, 2000)
            .opening(
                    "rear door",
                    Opening.Kind.DOOR,
                    Face.REAR,
                    Box.ofMm(0, 600, 0, 0, 1400, 1900),
                    true,
                    Box.ofMm(0, 600, 0, 800, 1400, 1900));

    @ParameterizedTest
    @CsvSource({
        // a leaf of 500 mm about (0, 500): 300 and 400 mm away it just passes a corner
        "300, 0, 100, , BROKEN",
        "300, 0, 100, LEFT, MET",
        "299, 0, 100, LEFT, BROKEN",
        "300, 0, 101, LEFT, BROKEN",
        "300, 400, 500, RIGHT, MET",
        "300, 399, 500, RIGHT, BROKEN",
        "300, 0, 100, RIGHT, BROKEN",
        "100, 0, 900, LEFT, BROKEN",
        "500, 0, 900, LEFT, MET"
    })
    void behindTheCornerThatALeafCutsOffThingsMayStand(int x, int y0, int y1, Face hinge, Verdict verdict) {
        TrialBody body = TrialBody.of(4000, 2000, 2300)
                .hung("door", Face.REAR, Box.ofMm(0, 0, 0, 0, 500, 1900), Box.ofMm(0, 0, 0, 500, 500, 1900), hinge);

        Row row = Trial.in(body)
                .floor("box", TrialItem.of("box", 300, y1 - y0, 400), x, y0)
                .rows(new OpeningSwingsFree())
                .get(0);

        assertThat(row.verdict()).isEqualTo(verdict);
    }

    @Test
    void nothingStandsInTheWayOfADoorLeaf() {
        Row clear = Trial.in(inward)
                .floor("crate", crate, 800, 700)
                .rows(new OpeningSwingsFree())
                .get(0);
        Row barred = Trial.in(inward)
                .floor("crate", crate, 760, 700)
                .rows(new OpeningSwingsFree())
                .get(0);

        assertThat(clear.verdict()).isEqualTo(Verdict.MET);
        assertThat(barred.demand()).isEqualTo(40.0);
        assertThat(barred.finding()).isEqualTo("Crate stands 40 mm into the way of rear door.");
        assertThat(barred.mend()).isEqualTo("Move Crate at least 40 mm forward.");
        assertThat(barred.state()).isEqualTo("always");
    }

    @Test
    void noMovablePartOpensIntoTheLeafOfAnExit() {
        Row row = Trial.in(inward)
                .put("rack", rack, Trial.onFloor(1390, 700, QuarterTurn.R180))
                .rows(new OpeningSwingsFree())
                .get(0);
        Row clear = Trial.in(inward)
                .put("rack", rack, Trial.onFloor(1400, 700, QuarterTurn.R180))
                .rows(new OpeningSwingsFree())
                .get(0);

        assertThat(row.finding()).isEqualTo("\"door\" of Rack moves 10 mm into the way of the exit rear door.");
        assertThat(row.demand()).isEqualTo(10.0);
        assertThat(clear.verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void partsWithoutAStatedHoldAreNotAssessed() {
        TrialItem open = TrialItem.of("chest", 400, 900, 800)
                .movable("upper drawer", MovablePart.Kind.DRAWER, Box.ofMm(400, 0, 100, 800, 900, 700), null)
                .movable("lower drawer", MovablePart.Kind.DRAWER, Box.ofMm(400, 0, 0, 800, 900, 100), null);

        Row row = Trial.in(body)
                .floor("chest", open, 0, 0)
                .rows(new PartsSecured())
                .get(0);
        Row held = Trial.in(body)
                .floor("rack", rack, 0, 0)
                .rows(new PartsSecured())
                .get(0);

        assertThat(row.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(row.finding())
                .isEqualTo("What holds upper drawer and lower drawer of Chest on the road is not stated.");
        assertThat(row.mend()).isEqualTo("State in item chest what holds them, such as a latch.");
        assertThat(held.verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void hostingFollowsChainsAndSurvivesCircles() {
        var scene = Trial.in(body)
                .put("one", crate, Trial.on("two", 0, 0, 400))
                .put("two", crate, Trial.on("one", 0, 0, 400))
                .floor("base", crate.stacking(50), 0, 0)
                .put("lower", crate, Trial.on("base", 0, 0, 400))
                .put("upper", crate, Trial.on("lower", 0, 0, 800))
                .put("hung", crate, Trial.under("base", 0, 0, 0))
                .scene();
        var units = scene.units();
        var station = Situation.ON_STATION;

        assertThat(Hosting.standsOn(scene, units.get(4), units.get(2), station)).isTrue();
        assertThat(Hosting.standsOn(scene, units.get(3), units.get(2), station)).isTrue();
        assertThat(Hosting.standsOn(scene, units.get(2), units.get(4), station)).isFalse();
        assertThat(Hosting.standsOn(scene, units.get(0), units.get(2), station)).isFalse();
        assertThat(Hosting.standsOn(scene, units.get(5), units.get(2), station)).isFalse();
    }

    @Test
    void everyPurposeHasItsWords() {
        TrialItem all = TrialItem.of("all", 100, 100, 100)
                .zone(Purpose.SERVICE, Box.ofMm(0, 0, 0, 1, 1, 1))
                .zone(Purpose.SWING, Box.ofMm(0, 0, 0, 1, 1, 1))
                .zone(Purpose.SEAT, Box.ofMm(0, 0, 0, 1, 1, 1))
                .zone(Purpose.AIR, Box.ofMm(0, 0, 0, 1, 1, 1))
                .zone(Purpose.EXIT, Box.ofMm(0, 0, 0, 1, 1, 1));
        var zones =
                Trial.in(body).floor("all", all, 0, 0).scene().units().get(0).zones(Situation.ON_STATION);

        assertThat(zones.stream().map(ZoneWords::of))
                .containsExactly(
                        "the service zone \"service 0\" of All",
                        "the way of \"swing 1\" of All",
                        "the seat zone \"seat 2\" of All",
                        "the air zone \"air 3\" of All",
                        "the exit zone \"exit 4\" of All");
    }
}

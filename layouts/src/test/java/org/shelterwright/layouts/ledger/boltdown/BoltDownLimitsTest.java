package org.shelterwright.layouts.ledger.boltdown;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.item.Power;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.layouts.layout.BoltDownOrder;
import org.shelterwright.layouts.layout.BoltDownOrder.Before;
import org.shelterwright.layouts.ledger.LedgerBuilder;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.LimitBook;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.RuleSets;
import org.shelterwright.layouts.rules.Rules;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.trial.Trial;
import org.shelterwright.layouts.trial.TrialBody;
import org.shelterwright.layouts.trial.TrialItem;

class BoltDownLimitsTest {
    private final TrialBody body =
            TrialBody.of(4000, 2000, 2000).rearDoor(500, 1500).floorGrid();
    private final TrialItem rack = TrialItem.of("rack", 800, 600, 1800);
    private final TrialItem table = TrialItem.of("table", 700, 1200, 800);

    private static List<Row> rows(Trial trial, Limit limit, String... order) {
        return rows(trial, limit, BoltDownOrder.of(List.of(order)));
    }

    private static List<Row> rows(Trial trial, Limit limit, BoltDownOrder order) {
        var layout = trial.layout().withBoltDown(order);
        Scene scene = Scene.of(layout, Rules.of(layout.brief(), RuleSets.builtIn()));
        return LedgerBuilder.full(new LimitBook(List.of(limit)), scene).rows();
    }

    /** A rack at the front behind a table that leaves 400 mm to each wall. */
    private Trial behindTable() {
        return Trial.in(body)
                .rules("shelter-common")
                .floor("rack", rack, 3200, 700)
                .floor("table", table, 1500, 400);
    }

    @Test
    void eachUnitComesInPastThoseBeforeIt() {
        Row row = rows(behindTable(), new InOrder(), "rack", "table").get(0);

        assertThat(row.verdict()).isEqualTo(Verdict.MET);
        assertThat(row.finding()).isEqualTo("All 2 units come in, each past those before it.");
    }

    @Test
    void aTableBeforeTheRackIsNamedAsWhatIsInTheWay() {
        List<Row> rows = rows(
                behindTable().floor("crate", TrialItem.of("crate", 300, 300, 300), 500, 0),
                new InOrder(),
                "table",
                "crate",
                "rack");

        assertThat(rows).singleElement().satisfies(row -> {
            assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
            assertThat(row.units()).containsExactly("rack", "table");
            assertThat(row.finding()).isEqualTo("Rack does not come in past Table.");
            assertThat(row.mend()).isEqualTo("Bring it in before Table, or move that one.");
        });
    }

    @Test
    void anExactFitThroughTheDoorHolds() {
        Trial exact = Trial.in(body).floor("box", TrialItem.of("box", 2000, 1000, 2000), 1000, 500);
        Trial tooWide = Trial.in(body).floor("box", TrialItem.of("box", 2000, 1001, 2000), 1000, 500);

        assertThat(rows(exact, new ThroughOpening(), "box").get(0).verdict()).isEqualTo(Verdict.MET);
        Row row = rows(tooWide, new ThroughOpening(), "box").get(0);
        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.finding())
                .isEqualTo(
                        "Box does not come from its place through the rear door, even with nothing else in the body.");
        assertThat(row.mend())
                .isEqualTo(
                        "Take it apart and enter the parts as items of their own, place it elsewhere, or make an opening"
                                + " larger.");
    }

    @Test
    void aLongUnitAcrossIsTurnedOnTheWay() {
        Trial across = Trial.in(TrialBody.of(4000, 2000, 2000).rearDoor(650, 1350))
                .floor("bench", TrialItem.of("bench", 500, 1200, 800), 3500, 400);

        assertThat(rows(across, new InOrder(), "bench").get(0).verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void whatCarriesAUnitIsInBeforeIt() {
        Trial trial = Trial.in(body)
                .floor(
                        "desk",
                        TrialItem.of("desk", 700, 1000, 750)
                                .support("top", Rect.ofMm(0, 0, 700, 1000), 750, false, 50.0),
                        3000,
                        500)
                .put(
                        "screen",
                        TrialItem.of("screen", 200, 500, 400).on(Surface.ON_UNIT),
                        Trial.on("desk", 3000, 700, 750));

        Row row = rows(trial, new InOrder(), "screen", "desk").get(0);

        assertThat(row.finding()).isEqualTo("Screen comes before Desk, which carries it.");
        assertThat(row.mend()).isEqualTo("Bring Desk in first.");
    }

    @Test
    void withoutOrderOrWithGapsNothingIsSaidToBeMet() {
        Row none = LedgerBuilder.full(
                        new LimitBook(List.of(new InOrder())), behindTable().scene())
                .rows()
                .get(0);
        Row gap = rows(behindTable(), new InOrder(), "rack").stream()
                .filter(row -> row.verdict() == Verdict.NOT_ASSESSED)
                .findFirst()
                .orElseThrow();

        assertThat(none.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(none.finding()).isEqualTo("The layout holds no order of bringing in.");
        assertThat(gap.finding()).isEqualTo("The order leaves out Table.");
    }

    @Test
    void aBodyWithoutOpeningsIsNotAssessed() {
        Row row = rows(Trial.in(TrialBody.of(4000, 2000, 2000)).floor("rack", rack, 0, 0), new InOrder(), "rack")
                .get(0);

        assertThat(row.finding()).isEqualTo("The body Trial body states no opening through which anything comes in.");
    }

    @Test
    void whatIsSetBeforeOthersIsHeld() {
        BoltDownOrder order = BoltDownOrder.of(List.of("rack", "table"))
                .withBefore(List.of(new Before("table", "rack", "paint must dry")));

        Row row = rows(behindTable(), new SetBefore(), order).get(0);

        assertThat(row.finding()).isEqualTo("Table is set to be in before Rack (paint must dry), but comes after it.");
    }

    /** Two lockers side by side between walls, each bolted at the back; the forearm comes in from the front. */
    @Test
    void fixingsMustBeWithinReachAtTheirTime() {
        TrialItem locker = TrialItem.of("locker", 600, 1000, 1800)
                .fixing(Point.ofMm(50, 50, 0), Face.BOTTOM, "M10")
                .fixing(Point.ofMm(50, 950, 0), Face.BOTTOM, "M10");
        Trial trial = Trial.in(body)
                .rules("shelter-common")
                .put("back", locker, Trial.onFloor(3400, 500, QuarterTurn.R180))
                .put("front", TrialItem.of("front", 600, 2000, 1950), Trial.onFloor(2800, 0, QuarterTurn.R0));

        assertThat(rows(trial, new ToolsReach(), "back", "front").get(0).verdict())
                .isEqualTo(Verdict.MET);
        Row row = rows(trial, new ToolsReach(), "front", "back").get(0);
        assertThat(row.verdict()).isEqualTo(Verdict.MET);
        assertThat(row.finding()).isEqualTo("Hand and tool get to all 2 fixings at their time.");
    }

    @Test
    void hiddenFixingsAreNamedWithWhatHidesThem() {
        TrialItem locker = TrialItem.of("locker", 600, 2000, 1950)
                .fixing(Point.ofMm(550, 50, 0), Face.BOTTOM, "M10")
                .fixing(Point.ofMm(550, 1950, 0), Face.BOTTOM, "M10");
        Trial trial = Trial.in(body)
                .rules("shelter-common")
                .put("back", locker, Trial.onFloor(3400, 0, QuarterTurn.R0))
                .put("crate", TrialItem.of("crate", 600, 2000, 400), Trial.onFloor(2800, 0, QuarterTurn.R0));

        Row row = rows(trial, new ToolsReach(), "crate", "back").get(0);

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.finding()).isEqualTo("Hand and tool do not get to F1 and F2 of Back past Crate.");
        assertThat(row.mend()).isEqualTo("Bring it in before them, or leave room beside it.");
    }

    @Test
    void aLiftThatNobodyBearsIsBroken() {
        Trial trial = Trial.in(body)
                .rules("shelter-common")
                .floor("safe", TrialItem.of("safe", 500, 500, 500).mass(600.0, Point.ofMm(250, 250, 250)), 1000, 500);

        Row row = rows(trial, new LiftHeld(), "safe").get(0);

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.finding())
                .startsWith("Safe weighs up to 600 kg. Floor trolley, 2 people; it takes 500 kg. Not by hand:");
        assertThat(row.mend())
                .isEqualTo("State on the item what comes off it, take heavy parts out first, or use a stronger hoist.");
    }

    @Test
    void anUnknownMassIsNotAssessed() {
        Trial trial = Trial.in(body)
                .rules("shelter-common")
                .floor("safe", TrialItem.of("safe", 500, 500, 500).mass(null, null), 1000, 500);

        assertThat(rows(trial, new LiftHeld(), "safe").get(0).finding()).isEqualTo("The mass of Safe is not known.");
    }

    @Test
    void everyLimitHasAnIdOfTheSubject() {
        assertThat(BoltDownLimits.all())
                .allSatisfy(limit -> assertThat(limit.id()).startsWith("boltdown."));
        assertThat(Stream.of("boltdown.order", "boltdown.removal"))
                .allMatch(id -> BoltDownLimits.all().stream()
                        .anyMatch(limit -> limit.id().equals(id)));
    }

    @Test
    void oneUnitComesInByItself() {
        Row row = rows(Trial.in(body).floor("rack", rack, 3200, 700), new InOrder(), "rack")
                .get(0);

        assertThat(row.finding()).isEqualTo("The one unit comes in.");
        assertThat(row.verdict()).isEqualTo(Verdict.MET);
    }

    @Test
    void everyUnitInTheWayIsNamed() {
        // given two tables that each close the way from wall to wall
        Trial trial = Trial.in(body)
                .floor("rack", rack, 3200, 700)
                .floor("table", TrialItem.of("table", 700, 2000, 800), 2000, 0)
                .floor("bench", TrialItem.of("bench", 700, 2000, 800), 1000, 0);

        List<Row> rows = rows(trial, new InOrder(), "table", "bench", "rack");

        assertThat(rows)
                .filteredOn(row -> row.units().get(0).equals("rack"))
                .singleElement()
                .satisfies(row -> {
                    assertThat(row.demand()).isEqualTo(2.0);
                    assertThat(row.finding()).isEqualTo("Rack does not come in past Table and Bench.");
                    assertThat(row.mend()).isEqualTo("Bring it in before Table and Bench, or move them.");
                });
    }

    @Test
    void whatHasNoWayInEvenAloneIsSaidToHaveNone() {
        Trial tooWide = Trial.in(body).floor("box", TrialItem.of("box", 2000, 1001, 2000), 1000, 500);

        Row row = rows(tooWide, new InOrder(), "box").get(0);

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.finding()).isEqualTo("Box has no way in even with nothing else in the body.");
    }

    @Test
    void whatIsSetBeforeOthersAndIsSoIsCounted() {
        BoltDownOrder order = BoltDownOrder.of(List.of("rack", "table"))
                .withBefore(List.of(new Before("rack", "table", null), new Before("rack", "gone", null)));
        BoltDownOrder turned =
                BoltDownOrder.of(List.of("table", "rack")).withBefore(List.of(new Before("rack", "table", null)));

        Row held = rows(behindTable(), new SetBefore(), order).get(0);
        Row broken = rows(behindTable(), new SetBefore(), turned).get(0);

        assertThat(held.verdict()).isEqualTo(Verdict.MET);
        assertThat(held.finding()).isEqualTo("As set: 1 pair in order.");
        assertThat(broken.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(broken.units()).containsExactly("rack", "table");
        assertThat(broken.finding()).isEqualTo("Rack is set to be in before Table, but comes after it.");
        assertThat(rows(behindTable(), new SetBefore(), "rack", "table").get(0).doesNotApply())
                .isTrue();
    }

    @Test
    void whereNoForearmHasRoomNobodyReachesAFixing() {
        TrialItem block = TrialItem.of("block", 3000, 2000, 1950)
                .fixing(Point.ofMm(1500, 1000, 0), Face.BOTTOM, "M10")
                .fixing(Point.ofMm(50, 1000, 0), Face.BOTTOM, "M10");
        Trial trial = Trial.in(body).rules("shelter-common").floor("block", block, 1000, 0);

        Row row = rows(trial, new ToolsReach(), "block").get(0);

        assertThat(row.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(row.finding())
                .isEqualTo("Hand and tool do not get to F1 of Block: there is no room for a forearm at any side within"
                        + " reach.");
        assertThat(row.demand()).isEqualTo(2.0);
        assertThat(row.capacity()).isEqualTo(1.0);
        assertThat(row.mend()).isEqualTo("Leave room beside it, or state the tool zone of the fixing in the catalog.");
    }

    @Test
    void reachIsNotAssessedWithoutItsFigures() {
        TrialItem locker = TrialItem.of("locker", 600, 1000, 1800).fixing(Point.ofMm(50, 50, 0), Face.BOTTOM, "M10");
        Trial trial = Trial.in(body).floor("locker", locker, 2000, 500);

        assertThat(rows(trial, new ToolsReach(), "locker").get(0).verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(rows(trial, new LiftHeld(), "locker").get(0).verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(rows(trial, new LiftHeld(), "locker").get(0).finding()).startsWith("No value is set for ");
    }

    @Test
    void theLiftThatUsesMostIsTold() {
        Trial trial = Trial.in(body)
                .rules("shelter-common")
                .floor("light", TrialItem.of("light", 300, 300, 300).mass(2.0, Point.ofMm(150, 150, 150)), 500, 500)
                .floor("heavy", TrialItem.of("heavy", 500, 500, 500).mass(450.0, Point.ofMm(250, 250, 250)), 1000, 500)
                .floor("odd", TrialItem.of("odd", 300, 300, 300).mass(null, null), 2000, 500);

        List<Row> rows = rows(trial, new LiftHeld(), "light", "heavy", "odd");

        assertThat(rows).extracting(Row::verdict).containsExactlyInAnyOrder(Verdict.MET, Verdict.NOT_ASSESSED);
        assertThat(rows)
                .filteredOn(row -> row.verdict() == Verdict.MET)
                .singleElement()
                .satisfies(row -> {
                    assertThat(row.units()).containsExactly("heavy");
                    assertThat(row.mend()).isNull();
                });
    }

    private Trial serviced(int moved) {
        return Trial.in(body)
                .limit(Figure.REMOVAL_MOVED, moved)
                .limit(Figure.MINUTES_IN, 10)
                .limit(Figure.MINUTES_PER_FIXING, 2)
                .floor(
                        "rack",
                        TrialItem.of("rack", 800, 600, 1800)
                                .power(new Power("230 V ac", 100, null, null, null, null, null, null))
                                .fixing(Point.ofMm(50, 50, 0), Face.BOTTOM, "M10")
                                .fixing(Point.ofMm(750, 50, 0), Face.BOTTOM, "M10"),
                        3200,
                        700)
                .floor("table", TrialItem.of("table", 700, 2000, 800), 1500, 0);
    }

    /** Two ways in of 10 min each and two fixings of 2 min: 24 min (by hand). */
    @Test
    void whatIsServicedComesOutPastNoMoreThanASetNumberOfOthers() {
        Row allowed = rows(serviced(2), new ComesOut(), "rack", "table").get(0);
        Row exact = rows(serviced(1), new ComesOut(), "rack", "table").get(0);
        Row broken = rows(serviced(0), new ComesOut(), "rack", "table").get(0);

        assertThat(allowed.verdict()).isEqualTo(Verdict.MET);
        assertThat(allowed.units()).containsExactly("rack", "table");
        assertThat(allowed.finding())
                .isEqualTo(
                        "Rack comes out once Table is out. Taking out takes about 24 min, putting in again as long.");
        assertThat(exact.verdict()).isEqualTo(Verdict.CLOSE);
        assertThat(exact.mend()).isNull();
        assertThat(broken.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(broken.mend()).isEqualTo("Give it a way of its own to an opening.");
    }

    @Test
    void whatComesOutFreelyOrNotAtAllIsSaidToDoSo() {
        TrialItem rack = TrialItem.of("rack", 800, 600, 1800)
                .power(new Power("230 V ac", 100, null, null, null, null, null, null));
        TrialItem wide = TrialItem.of("wide", 2000, 1001, 2000)
                .power(new Power("230 V ac", 100, null, null, null, null, null, null));
        Row free = rows(
                        Trial.in(body).limit(Figure.REMOVAL_MOVED, 1).floor("rack", rack, 3200, 700),
                        new ComesOut(),
                        "rack")
                .get(0);
        Row never = rows(
                        Trial.in(body).limit(Figure.REMOVAL_MOVED, 1).floor("wide", wide, 1000, 500),
                        new ComesOut(),
                        "wide")
                .get(0);

        assertThat(free.finding()).isEqualTo("Rack comes out with nothing moved first.");
        assertThat(free.demand()).isZero();
        assertThat(never.verdict()).isEqualTo(Verdict.BROKEN);
        assertThat(never.finding()).isEqualTo("Wide does not come out at all: see the rows on openings and overlaps.");
    }

    @Test
    void withoutServiceOrFigureNothingIsTakenOut() {
        Row nothing = rows(Trial.in(body).floor("rack", rack, 3200, 700), new ComesOut(), "rack")
                .get(0);
        TrialItem powered = TrialItem.of("rack", 800, 600, 1800)
                .power(new Power("230 V ac", 100, null, null, null, null, null, null));
        Row unset = rows(Trial.in(body).floor("rack", powered, 3200, 700), new ComesOut(), "rack")
                .get(0);

        assertThat(nothing.doesNotApply()).isTrue();
        assertThat(unset.verdict()).isEqualTo(Verdict.NOT_ASSESSED);
        assertThat(unset.finding()).contains(Figure.REMOVAL_MOVED.id());
    }
}

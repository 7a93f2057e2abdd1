package org.shelterwright.layouts.ledger.boltdown;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
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
}

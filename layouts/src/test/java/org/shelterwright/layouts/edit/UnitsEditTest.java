package org.shelterwright.layouts.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.edit.AlignUnits.Edge;
import org.shelterwright.layouts.file.SmallPost;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Pin;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.trial.Trial;
import org.shelterwright.layouts.trial.TrialBody;
import org.shelterwright.layouts.trial.TrialItem;

/** Edits of several units at once. */
class UnitsEditTest {
    private static final Layout START = SmallPost.layout();

    /** Boxes of 300, 400 and 500 mm along x, 200 mm apart at different places across; a cup stands on the second. */
    private static Layout row() {
        return Trial.in(TrialBody.of(4000, 2000, 2000))
                .floor("a", TrialItem.of("a", 300, 300, 300), 100, 0)
                .floor("b", TrialItem.of("b", 400, 500, 300), 700, 700)
                .floor("c", TrialItem.of("c", 500, 401, 300), 3000, 1200)
                .put("cup", TrialItem.of("cup", 100, 100, 100), Trial.on("b", 800, 800, 300))
                .layout();
    }

    private static Point at(Layout layout, String unit) {
        return layout.placements().get(unit).station().pose().at();
    }

    @Test
    void copiesHaveTheNextFreeNumberAndStandOnTheCopyOfTheirHost() {
        Point shift = Point.ofMm(0, 1000, 0);

        Layout more = new DuplicateUnits(List.of("printer-1", "table-1", "rack-2", "table-1"), shift).apply(START);

        List<UnitSpec> copies = more.brief().units().subList(5, 8);
        assertThat(copies).extracting(UnitSpec::id).containsExactly("printer-2", "table-2", "rack-3");
        assertThat(copies).extracting(UnitSpec::name).containsExactly("Printer 2", "Table 2", "Rack 3");
        assertThat(copies).extracting(UnitSpec::item).containsExactly("printer", "table", "rack");
        assertThat(at(more, "table-2")).isEqualTo(at(START, "table-1").plus(shift));
        assertThat(at(more, "printer-2")).isEqualTo(at(START, "printer-1").plus(shift));
        assertThat(more.placements().get("printer-2").station().host()).isEqualTo("table-2");
        assertThat(more.placements()).doesNotContainKey("rack-3");
        assertThat(more.placements().get("table-2").pin()).isEqualTo(Pin.NONE);
        assertThat(more.parts()).isEqualTo(START.parts());
    }

    @Test
    void aCopyAloneStaysOnTheSameHostAndTakenNumbersAreLeftOut() {
        Layout once = new DuplicateUnits(List.of("rack-1"), Point.ORIGIN).apply(START);
        Layout cup = new DuplicateUnits(List.of("cup"), Point.ofMm(50, 0, 0)).apply(row());

        assertThat(once.brief().units().get(5).id()).isEqualTo("rack-3");
        assertThat(cup.placements().get("cup-2").station())
                .isEqualTo(new Place(
                        row().placements().get("cup").station().surface(),
                        "b",
                        row().placements().get("cup").station().pose().moved(Point.ofMm(50, 0, 0))));
        assertThat(cup.brief().units().get(4).name()).isEqualTo("Cup 2");
        assertThat(new DuplicateUnits(List.of("cup"), Point.ORIGIN).name()).isEqualTo("Duplicate cup");
        assertThatThrownBy(() -> new DuplicateUnits(List.of(), Point.ORIGIN))
                .hasMessage("Name at least one unit to duplicate.");
    }

    @ParameterizedTest
    @CsvSource({
        "LOW, 0, 0, 0",
        "HIGH, 0, -200000, -101000",
        // middles: 150, 950, 1400.5 mm from the right wall
        "MIDDLE, 0, -100000, -50500"
    })
    void unitsComeIntoLineWithTheFirst(Edge edge, int a, int b, int c) {
        Layout aligned = new AlignUnits(List.of("a", "b", "c"), Axis.Y, edge).apply(row());

        assertThat(at(aligned, "a")).isEqualTo(new Point(100_000, a, 0));
        assertThat(at(aligned, "b")).isEqualTo(new Point(700_000, b, 0));
        assertThat(at(aligned, "c")).isEqualTo(new Point(3_000_000, c, 0));
        assertThat(at(aligned, "cup").y()).isEqualTo(800_000 + b - 700_000);
    }

    @Test
    void aMiddleBetweenTwoMicrometresIsRoundedDown() {
        Layout odd = new PutUnit("c", Trial.onFloor(3000, 1200, QuarterTurn.R0)).apply(row());
        Layout moved = new PutUnit("a", Place.onFloor(Pose.at(new Point(1, 0, 0)))).apply(odd);

        Layout aligned = new AlignUnits(List.of("a", "b"), Axis.X, Edge.MIDDLE).apply(moved);

        assertThat(at(aligned, "b").x()).isEqualTo(150_001 - 200_000);
    }

    @Test
    void unitsSpreadEvenlyBetweenTheOutermost() {
        // 100 to 3500 mm, 1200 mm filled: two gaps of 1100 mm
        Layout spread = new SpreadUnits(List.of("c", "a", "b"), Axis.X).apply(row());

        assertThat(at(spread, "a").x()).isEqualTo(100_000);
        assertThat(at(spread, "b").x()).isEqualTo(100_000 + 300_000 + 1_100_000);
        assertThat(at(spread, "c").x()).isEqualTo(3_000_000);
        assertThat(at(spread, "cup").x()).isEqualTo(800_000 + 1_500_000 - 700_000);
        assertThat(new SpreadUnits(List.of("c", "a", "b"), Axis.X).name()).isEqualTo("Spread c, a, b");
    }

    @Test
    void gapsThatDoNotComeOutAreOffByLessThanAMicrometre() {
        Layout row = Trial.in(TrialBody.of(4000, 2000, 2000))
                .floor("a", TrialItem.of("a", 100, 100, 100), 0, 0)
                .floor("b", TrialItem.of("b", 100, 100, 100), 0, 200)
                .floor("c", TrialItem.of("c", 100, 100, 100), 50, 400)
                .floor("d", TrialItem.of("d", 100, 100, 100), 1000, 600)
                .layout();

        Layout spread = new SpreadUnits(List.of("a", "b", "c", "d"), Axis.X).apply(row);

        // 700 mm free in three gaps
        assertThat(at(spread, "b").x()).isEqualTo(100_000 + 233_333);
        assertThat(at(spread, "c").x()).isEqualTo(200_000 + 466_666);
        assertThat(at(spread, "d").x()).isEqualTo(1_000_000);
    }

    @Test
    void tooFewUnitsAndUnplacedOnesAreRefused() {
        assertThatThrownBy(() -> new AlignUnits(List.of("a", "a"), Axis.X, Edge.LOW))
                .hasMessage("Name at least two units to align.");
        assertThatThrownBy(() -> new SpreadUnits(List.of("a", "b"), Axis.X))
                .hasMessage("Name at least three units to spread evenly.");
        assertThatThrownBy(() -> new AlignUnits(List.of("rack-1", "rack-2"), Axis.X, Edge.LOW).apply(START))
                .hasMessage("The unit \"rack-2\" is not placed yet. Put it at a place first.");
        assertThat(new AlignUnits(List.of("a", "b"), Axis.X, Edge.LOW).name()).isEqualTo("Align a, b");
    }
}

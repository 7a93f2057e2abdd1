package org.shelterwright.layouts.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.file.SmallPost;
import org.shelterwright.layouts.layout.Acceptance;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Pin;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.rules.Figure;

class HistoryTest {
    @Test
    void namesWhatCanBeUndoneAndDoneAgain() {
        History<Layout> history = History.of(SmallPost.layout())
                .after(new PinUnit("rack-1", Pin.ALL))
                .after(new TakeOutUnit("printer-1"));

        assertThat(history.undoNames()).containsExactly("Take out printer-1", "Pin rack-1");
        assertThat(history.undo().redoNames()).containsExactly("Take out printer-1");
        assertThat(history.undo().undo().current()).isEqualTo(SmallPost.layout());
        assertThat(history.undo().redo().current()).isEqualTo(history.current());
    }

    @Test
    void aNewChangeForgetsWhatWasUndone() {
        History<Layout> history = History.of(SmallPost.layout()).after(new PinUnit("rack-1", Pin.ALL));

        History<Layout> other = history.undo().after(new PinUnit("table-1", Pin.ALL));

        assertThat(other.canRedo()).isFalse();
        assertThat(other.undoNames()).containsExactly("Pin table-1");
    }

    @Test
    void aChangeWithoutEffectLeavesNoTrace() {
        History<Layout> history = History.of(SmallPost.layout());

        assertThat(history.after(new RenameUnit("rack-1", "Rack 1")).canUndo()).isFalse();
        assertThat(history.undo()).isSameAs(history);
        assertThat(history.redo()).isSameAs(history);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void undoGivesBackEveryLayoutAndEveryLayoutCanBeSaved(long seed) {
        Random random = new Random(seed);
        History<Layout> history = History.of(SmallPost.layout());
        List<Layout> seen = new ArrayList<>(List.of(history.current()));
        int refused = 0;
        for (int i = 0; i < 300; i++) {
            try {
                History<Layout> next = history.after(randomEdit(random, history.current(), i));
                if (next != history) {
                    seen.add(next.current());
                }
                history = next;
            } catch (IllegalArgumentException e) {
                assertThat(e.getMessage()).endsWith(".");
                refused++;
            }
            if (i % 50 == 0) {
                byte[] bytes = LayoutFiles.bytes(history.current());
                assertThat(LayoutFiles.read(new InputFile("seed " + seed, bytes))
                                .layout())
                        .as("seed %d, edit %d", seed, i)
                        .isEqualTo(history.current());
            }
        }
        assertThat(seen).as("seed %d: %d refused", seed, refused).hasSizeGreaterThan(100);

        for (int i = seen.size() - 1; i >= 0; i--) {
            assertThat(history.current()).as("seed %d, step %d", seed, i).isEqualTo(seen.get(i));
            history = history.undo();
        }
        assertThat(history.canUndo()).isFalse();
        for (Layout layout : seen.subList(1, seen.size())) {
            history = history.redo();
            assertThat(history.current()).isEqualTo(layout);
        }
    }

    private static Edit randomEdit(Random random, Layout layout, int count) {
        List<UnitSpec> units = layout.brief().units();
        String unit = units.get(random.nextInt(units.size())).id();
        String other = units.get(random.nextInt(units.size())).id();
        return switch (random.nextInt(12)) {
            case 0, 1 -> new PutUnit(unit, randomPlace(random, other));
            case 2 -> random.nextInt(4) == 0 ? new TakeOutUnit(unit) : new PutUnit(unit, randomPlace(random, other));
            case 3 -> new TurnUnit(unit, QuarterTurn.values()[1 + random.nextInt(3)]);
            case 4 -> new PinUnit(unit, random.nextBoolean() ? Pin.ALL : Pin.NONE);
            case 5 -> new SwapUnits(unit, other);
            case 6 -> new StowUnit(unit, random.nextInt(3) == 0 ? null : randomPlace(random, other));
            case 7 -> new AddUnit(new UnitSpec("rack-" + (10 + count), "Rack", "rack", "more"), SmallPost.RACK);
            case 8 -> units.size() > 4 ? new RemoveUnit(unit) : new RenameUnit(unit, "Name " + count);
            case 9 -> new RenameUnit(unit, "Name " + random.nextInt(5));
            case 10 ->
                new SetLimit(
                        Figure.values()[random.nextInt(Figure.values().length)],
                        random.nextBoolean() ? null : random.nextInt(1000) / 8.0);
            default ->
                random.nextBoolean()
                        ? new AcceptRow(new Acceptance("fit.overlap", List.of(unit), "Seen.", "A", "2026-02-01"))
                        : new WithdrawAcceptance("fit.overlap", List.of(unit));
        };
    }

    private static Place randomPlace(Random random, String host) {
        Pose pose = new Pose(
                new Point(random.nextInt(4_000_000), random.nextInt(2_000_000), random.nextInt(1_000_000)),
                QuarterTurn.values()[random.nextInt(4)]);
        return random.nextInt(3) == 0 ? new Place(Surface.ON_UNIT, host, pose) : Place.onFloor(pose);
    }
}

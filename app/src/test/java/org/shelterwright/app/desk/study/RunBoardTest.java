package org.shelterwright.app.desk.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.layouts.study.results.Front;
import org.shelterwright.layouts.study.results.Measure;
import org.shelterwright.layouts.study.results.RunResult;

class RunBoardTest {
    @TempDir
    private static Path folder;

    private static RunBoard made;

    @BeforeAll
    static void run() throws IOException {
        made = PostRuns.board(folder);
    }

    private static RunBoard board() {
        return new RunBoard(made.study(), made.shown(), new Typeface());
    }

    private static List<Integer> numbers(Stream<RunResult> runs) {
        return runs.map(RunResult::run).toList();
    }

    @Test
    void hidesAndShowsSettingsAndVerdicts() {
        RunBoard board = board();

        board.show("body", "short", false);

        assertThat(board.shows("body", "short")).isFalse();
        assertThat(board.shown())
                .hasSize(6)
                .allMatch(run -> "long".equals(run.settings().get("body")));
        assertThat(board.count()).isEqualTo("6 of 12 runs");
        board.show("body", "short", true);
        assertThat(board.shown()).hasSize(12);
        assertThat(board.count()).isEqualTo("12 runs");
        board.show("refused", false);
        assertThat(board.shown()).hasSize(8).allMatch(run -> run.refused() == null);
    }

    @Test
    void theLastVerdictThatIsShownStays() {
        RunBoard board = board();
        for (String verdict : List.of("met", "close", "not-assessed", "broken")) {
            board.show(verdict, false);
        }

        board.show("refused", false);

        assertThat(board.shows("refused")).isTrue();
        assertThat(board.shown()).hasSize(4);
    }

    @Test
    void ordersByAColumnWithUnknownFiguresLast() {
        RunBoard board = board();

        board.order("mass", true);

        List<RunResult> shown = board.shown();
        assertThat(shown.subList(8, 12)).allMatch(run -> run.refused() != null);
        assertThat(shown.subList(0, 8))
                .extracting(run -> Measure.MASS.of(run).orElseThrow())
                .isSortedAccordingTo((a, b) -> Double.compare(b, a));
    }

    @Test
    void aClickOnThePlotMeansTheNearestRun() {
        RunBoard board = board();
        board.across().set(Measure.MASS);
        board.up().set(Measure.FREE);
        board.size(300, 120);
        var spots = board.spots();
        int run = Front.of(board.shown(), Measure.MASS, Measure.FREE).get(0).run();
        Spot spot = spots.get(run);
        assertThat(spot).isNotNull();

        int found = board.at(spot.plus(1, 1)).orElseThrow();

        assertThat(spots.get(found)).isEqualTo(spot);
        assertThat(board.at(new Spot(1, 1))).isEmpty();
        assertThat(board.plot()).isPresent();
        board.toggle(found);
        assertThat(board.marks()).containsExactly(spot);
    }

    @Test
    void saysWhatToChooseBeforeRunsAreComparedOrOpened() {
        RunBoard board = board();

        assertThat(board.whyNotCompared()).contains("Choose two to 4 runs; none is chosen.");
        assertThat(board.whyNotOpened()).contains("Choose one run; none is chosen.");
        board.toggle(1);
        assertThat(board.whyNotCompared()).contains("Choose two to 4 runs; one is chosen.");
        assertThat(board.whyNotOpened()).isEmpty();
        board.toggle(7);
        assertThat(board.whyNotCompared()).isEmpty();
        assertThat(board.whyNotOpened()).contains("Choose one run; 2 are chosen.");
        int refused = numbers(board.shown().stream().filter(run -> run.refused() != null))
                .get(0);
        board.choose(List.of(1, refused));
        assertThat(board.chosen().get()).containsExactly(1, refused);
        assertThat(board.whyNotCompared())
                .hasValueSatisfying(why -> assertThat(why).startsWith("Run " + refused + " has no layout: "));
        board.choose(List.of(1, 2, 3, 4, 7));
        assertThat(board.whyNotCompared()).contains("Choose two to 4 runs; 5 are chosen.");
    }

    @Test
    void whatIsHiddenIsNeitherPlottedNorLostFromTheChoice() {
        RunBoard board = board();
        board.toggle(1);

        board.show("body", "short", false);

        assertThat(board.chosen().get()).containsExactly(1);
        assertThat(board.marks()).isEmpty();
        board.show("body", "long", false);
        assertThat(board.plot()).isEmpty();
        assertThat(board.shown()).isEmpty();
    }
}

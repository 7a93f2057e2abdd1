package org.shelterwright.layouts.study.results;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.shelterwright.layouts.study.PostStudy;
import org.shelterwright.layouts.study.SealedStudy;

class FrontTest {
    private static final SealedStudy STUDY =
            PostStudy.sealed(PostStudy.text("", "\"seeds\": {\"first\": 1, \"count\": 60}"));

    private static boolean beats(RunResult a, RunResult b, Measure... measures) {
        boolean better = false;
        for (Measure measure : measures) {
            double sign = measure.better() == Measure.Better.MORE ? -1 : 1;
            double difference =
                    sign * (measure.of(a).orElseThrow() - measure.of(b).orElseThrow());
            if (difference > 0) {
                return false;
            }
            better |= difference < 0;
        }
        return better;
    }

    /** Against the definition, pair by pair, with many equal figures. */
    @Test
    void theFrontIsWhatNoRunBeats() {
        for (int seed = 0; seed < 200; seed++) {
            Random random = new Random(seed);
            List<RunResult> runs = new ArrayList<>();
            for (int i = 1; i <= 1 + random.nextInt(60); i++) {
                runs.add(Runs.of(STUDY, i, random.nextInt(6) / 4.0, 4000 + random.nextInt(6)));
            }
            List<RunResult> expected = runs.stream()
                    .filter(run -> runs.stream().noneMatch(other -> beats(other, run, Measure.USE, Measure.MASS)))
                    .toList();

            assertThat(Front.of(runs, Measure.USE, Measure.MASS))
                    .as("seed %d", seed)
                    .containsExactlyInAnyOrderElementsOf(expected);
            List<RunResult> free = runs.stream()
                    .filter(run -> runs.stream().noneMatch(other -> beats(other, run, Measure.MASS, Measure.FREE)))
                    .toList();
            assertThat(Front.of(runs, Measure.MASS, Measure.FREE))
                    .as("seed %d", seed)
                    .containsExactlyInAnyOrderElementsOf(free);
        }
    }

    @Test
    void runsWithoutTheFigureAreNotInIt() {
        RunResult known = Runs.of(STUDY, 1, 0.5, 4000);
        RunResult refused = RunResult.refused(2, STUDY.plan().run(2).ids(), 2, "Too large.");

        assertThat(Front.of(List.of(refused, known), Measure.USE, Measure.MASS)).containsExactly(known);
        assertThat(Front.of(List.of(known), Measure.USE, Measure.CABLE)).isEmpty();
    }

    @Test
    void thereIsNoFrontByAMeasureOfWhichNeitherMoreNorLessIsBetter() {
        assertThatThrownBy(() -> Front.of(List.of(), Measure.MASS, Measure.CENTRE_X))
                .hasMessage("There is no front by \"centre-x\": neither more nor less of it is better. Take another"
                        + " measure.");
    }
}

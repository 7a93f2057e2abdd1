package org.shelterwright.solver.study;

import java.time.Duration;
import org.jspecify.annotations.Nullable;

/**
 * How far a study is.
 *
 * @param done runs with a result, those of earlier starts included
 * @param fresh runs done since this start
 * @param total all runs
 * @param elapsed time since this start
 */
public record StudyProgress(int done, int fresh, int total, Duration elapsed) {
    /** Time to go if the runs left take as long as those of this start; {@code null} before the first is done. */
    public @Nullable Duration toGo() {
        return fresh == 0 ? null : elapsed.multipliedBy(total - done).dividedBy(fresh);
    }
}

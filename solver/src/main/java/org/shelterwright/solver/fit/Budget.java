package org.shelterwright.solver.fit;

import java.time.Duration;
import org.jspecify.annotations.Nullable;

/**
 * How long a search may go on. With a budget in moves alone, the same seed gives the same answer to the byte, on any
 * number of threads; with a time the answer depends on the machine.
 *
 * @param moves moves tried by all lanes together; {@code null}: no bound
 * @param time wall-clock time; {@code null}: no bound
 */
public record Budget(@Nullable Long moves, @Nullable Duration time) {
    /** Moves of a search for which nobody set a budget: some 20 s for 30 units on two cores. */
    public static final long USUAL_MOVES = 3_200_000;

    public Budget {
        if (moves == null && time == null) {
            throw new IllegalArgumentException("A search needs a budget of moves or of time.");
        }
        if (moves != null && moves < 1) {
            throw new IllegalArgumentException("The move budget of " + moves + " must be at least 1.");
        }
        if (time != null && (time.isZero() || time.isNegative())) {
            throw new IllegalArgumentException("The time budget of " + time + " must be above zero.");
        }
    }

    public static Budget moves(long moves) {
        return new Budget(moves, null);
    }

    public static Budget time(Duration time) {
        return new Budget(null, time);
    }
}

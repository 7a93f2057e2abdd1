package org.shelterwright.app.desk.search;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.solver.fit.FitOption;
import org.shelterwright.solver.fit.FitProgress;
import org.shelterwright.solver.fit.FitResult;

/**
 * Where the search stands. Immutable.
 *
 * @param running whether it goes on
 * @param stopping whether it was asked to end and is finishing its checks
 * @param seed its seed
 * @param steps each better score, the latest last
 * @param result what it found; {@code null} before its end
 * @param failure what went wrong, in a sentence; {@code null} if nothing did
 */
record Stand(
        boolean running,
        boolean stopping,
        long seed,
        List<FitProgress> steps,
        @Nullable FitResult result,
        @Nullable String failure) {
    static final Stand NONE = new Stand(false, false, 1, List.of(), null, null);

    Stand {
        steps = List.copyOf(steps);
    }

    /** Whether there is nothing to show of a search. */
    boolean idle() {
        return !running && result == null && failure == null;
    }

    /** The layouts that were found; none before the search has ended. */
    List<FitOption> options() {
        return result == null ? List.of() : result.options();
    }

    /** What is said of it beside the orders; empty if what is shown says all. */
    String sentence() {
        if (failure != null) {
            return failure;
        }
        if (running) {
            return "What is found is shown here after a full check. Work can go on meanwhile.";
        }
        if (result == null) {
            return "Pinned units stay where they are. Nothing changes on the desk until a layout is taken over.";
        }
        if (result.options().isEmpty()) {
            return "Nothing could be placed.";
        }
        var whyNot = result.whyNot();
        return whyNot == null ? "" : String.join(" ", whyNot.reasons()) + " " + String.join(" ", whyNot.relaxations());
    }

    static Stand started(long seed) {
        return new Stand(true, false, seed, List.of(), null, null);
    }

    Stand step(FitProgress step) {
        List<FitProgress> more = new ArrayList<>(steps);
        more.add(step);
        return new Stand(running, stopping, seed, more, result, failure);
    }

    Stand stop() {
        return new Stand(running, true, seed, steps, result, failure);
    }

    Stand ended(FitResult found) {
        return new Stand(false, false, seed, steps, found, null);
    }

    Stand failed(String sentence) {
        return new Stand(false, false, seed, steps, null, sentence);
    }

    /** Time until the last better score. */
    Duration reached() {
        return steps.isEmpty() ? Duration.ZERO : steps.get(steps.size() - 1).elapsed();
    }
}

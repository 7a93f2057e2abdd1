package org.shelterwright.solver.fit;

import java.time.Duration;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.jspecify.annotations.Nullable;
import org.shelterwright.solver.fit.model.Amounts;
import org.shelterwright.solver.fit.planning.Lane;

/** Tells an observer of new best scores, one call at a time and not too often. */
final class Pulse {
    private static final long LEAST_GAP_NS = 100_000_000L;

    private final FitObserver observer;
    private final long start = System.nanoTime();
    private final List<Lane> lanes = new CopyOnWriteArrayList<>();
    private @Nullable FitScore best;
    private long last;
    private boolean untold;

    Pulse(FitObserver observer) {
        this.observer = observer;
    }

    void watch(Lane lane) {
        lanes.add(lane);
    }

    synchronized void improved(Amounts amounts) {
        FitScore score = Choice.score(amounts);
        FitScore before = best;
        if (before == null || score.compareTo(before) < 0) {
            best = score;
            untold = true;
            tell(false);
        }
    }

    /** Tells the best so far, at once if {@code now}, else only if the last call is some time ago. */
    synchronized void tell(boolean now) {
        FitScore score = best;
        long time = System.nanoTime();
        if (score != null && untold && (now || time - last >= LEAST_GAP_NS)) {
            last = time;
            untold = false;
            observer.progress(new FitProgress(moves(), elapsed(), score));
        }
    }

    long moves() {
        return lanes.stream().mapToLong(Lane::moves).sum();
    }

    Duration elapsed() {
        return Duration.ofNanos(System.nanoTime() - start);
    }
}

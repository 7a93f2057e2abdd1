package org.shelterwright.solver.bench;

import java.time.Duration;
import java.util.concurrent.atomic.AtomicLong;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.solver.fit.Budget;
import org.shelterwright.solver.fit.FitOption;
import org.shelterwright.solver.fit.FitRequest;
import org.shelterwright.solver.fit.FitResult;
import org.shelterwright.solver.fit.FitScore;
import org.shelterwright.solver.fit.Fitter;
import org.shelterwright.solver.fit.StopSignal;

/** Runs the search until it reaches a goal. */
final class Reach {
    /** Every limit that the search prices holds, whatever the soft level. */
    static final FitScore ALL_MET = new FitScore(0, 0, Long.MAX_VALUE);

    private final Fitter fitter;
    private final int threads;

    /**
     * How a run went.
     *
     * @param goalSeconds when the search first told of a score as good as the goal; {@code NaN} if it never did
     * @param seconds until the checked result was there
     * @param cpuSeconds that the whole process used until then
     * @param best {@code null} if nothing could be placed
     */
    record Run(
            double goalSeconds,
            double seconds,
            double cpuSeconds,
            long moves,
            @Nullable FitOption best) {
        boolean reached() {
            return !Double.isNaN(goalSeconds);
        }
    }

    Reach(Fitter fitter, int threads) {
        this.fitter = fitter;
        this.threads = threads;
    }

    /** Searches until the goal is reached or the time is over. */
    Run toReach(Layout question, long seed, Duration time, FitScore goal) {
        return run(question, seed, time, goal, true);
    }

    /** Searches as long as it likes within the time, and notes when every limit held first. */
    Run toTheEnd(Layout question, long seed, Duration time) {
        return run(question, seed, time, ALL_MET, false);
    }

    private Run run(Layout question, long seed, Duration time, FitScore goal, boolean stopThere) {
        StopSignal stop = new StopSignal();
        AtomicLong reachedAt = new AtomicLong(-1);
        long cpu = Machine.cpuNanos();
        long start = System.nanoTime();
        FitResult result = fitter.fit(
                new FitRequest(question, seed, Budget.time(time), threads, 1),
                progress -> {
                    if (progress.best().compareTo(goal) <= 0) {
                        reachedAt.compareAndSet(-1, System.nanoTime() - start);
                        if (stopThere) {
                            stop.stop();
                        }
                    }
                },
                stop);
        double seconds = (System.nanoTime() - start) / 1e9;
        double cpuSeconds = (Machine.cpuNanos() - cpu) / 1e9;
        long at = reachedAt.get();
        FitOption best = result.options().isEmpty() ? null : result.options().get(0);
        return new Run(at < 0 ? Double.NaN : at / 1e9, seconds, cpuSeconds, result.moves(), best);
    }
}

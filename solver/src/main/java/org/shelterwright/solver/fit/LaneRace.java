package org.shelterwright.solver.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.shelterwright.solver.fit.kernel.Best;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.MomentLimits;
import org.shelterwright.solver.fit.planning.Lane;

/** Runs a fixed number of lanes on some threads; what comes out does not depend on how many. */
final class LaneRace {
    /** Lanes of a search, whatever the number of threads. */
    static final int LANES = 4;

    private static final int LOOK_MS = 20;

    private final FitProblem problem;
    private final MomentLimits limits;
    private final long seed;
    private final Budget budget;
    private final int threads;
    private final Pulse pulse;
    private final StopSignal stop;

    LaneRace(
            FitProblem problem,
            MomentLimits limits,
            long seed,
            Budget budget,
            int threads,
            Pulse pulse,
            StopSignal stop) {
        this.problem = problem;
        this.limits = limits;
        this.seed = seed;
        this.budget = budget;
        this.threads = Math.min(threads, LANES);
        this.pulse = pulse;
        this.stop = stop;
    }

    /** Runs all lanes and gives what they found: the best of each lane first, then the bests of their rounds. */
    List<Best> run() {
        ExecutorService executor = Executors.newFixedThreadPool(threads, runnable -> {
            Thread thread = new Thread(runnable, "fit-lane");
            thread.setDaemon(true);
            return thread;
        });
        try {
            List<Future<List<Best>>> futures = new ArrayList<>();
            for (int lane = 0; lane < LANES; lane++) {
                int number = lane;
                futures.add(executor.submit(() -> runLane(number)));
            }
            return merge(futures);
        } finally {
            executor.shutdownNow();
        }
    }

    private List<Best> runLane(int number) {
        if (number > 0 && stop.stopped()) {
            return List.of();
        }
        Long moves = budget.moves();
        long share = moves == null ? Long.MAX_VALUE / LANES : Math.max(1, moves / LANES);
        var time = budget.time();
        int turns = (LANES + threads - 1) / threads;
        long end = time == null ? Long.MAX_VALUE : System.nanoTime() + (long) (0.95 * time.toNanos() / turns);
        Lane lane = new Lane(
                problem, limits, number, seed, share, () -> stop.stopped() || System.nanoTime() > end, pulse::improved);
        pulse.watch(lane);
        Thread watch = new Thread(() -> watch(lane, end), "fit-watch");
        watch.setDaemon(true);
        watch.start();
        try {
            return lane.run();
        } finally {
            watch.interrupt();
        }
    }

    /** The planning engine needs a call to end its local search; the annealing asks for itself. */
    private void watch(Lane lane, long end) {
        try {
            while (true) {
                TimeUnit.MILLISECONDS.sleep(LOOK_MS);
                if (stop.stopped() || System.nanoTime() > end) {
                    lane.end();
                }
            }
        } catch (InterruptedException ended) {
            Thread.currentThread().interrupt();
        }
    }

    private List<Best> merge(List<Future<List<Best>>> futures) {
        List<Best> first = new ArrayList<>();
        List<Best> rest = new ArrayList<>();
        for (Future<List<Best>> future : futures) {
            List<Best> found = await(future);
            found.stream().limit(1).forEach(first::add);
            found.stream().skip(1).forEach(rest::add);
        }
        first.addAll(rest);
        return first;
    }

    private List<Best> await(Future<List<Best>> future) {
        while (true) {
            try {
                return future.get(200, TimeUnit.MILLISECONDS);
            } catch (TimeoutException notYet) {
                pulse.tell(false);
            } catch (InterruptedException interrupted) {
                stop.stop();
                Thread.currentThread().interrupt();
                throw new IllegalStateException("The search was interrupted.", interrupted);
            } catch (ExecutionException failed) {
                throw new IllegalStateException("A lane of the search failed.", failed.getCause());
            }
        }
    }
}

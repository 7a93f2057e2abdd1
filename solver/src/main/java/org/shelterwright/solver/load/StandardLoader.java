package org.shelterwright.solver.load;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.LongSupplier;
import org.shelterwright.solver.fit.Budget;
import org.shelterwright.solver.fit.StopSignal;
import org.shelterwright.solver.fit.kernel.Dice;
import org.shelterwright.solver.load.audit.LoadAudit;
import org.shelterwright.solver.load.beam.Effort;
import org.shelterwright.solver.load.block.Block;
import org.shelterwright.solver.load.block.BlockTable;
import org.shelterwright.solver.load.block.Blocks;
import org.shelterwright.solver.load.lane.Lane;
import org.shelterwright.solver.load.lane.Tuning;
import org.shelterwright.solver.load.model.Load;
import org.shelterwright.solver.load.model.LoadProblem;
import org.shelterwright.solver.load.practice.Lightness;
import org.shelterwright.solver.load.practice.PracticeRule;
import org.shelterwright.solver.load.practice.Settling;

/** Finds loads with blocks, a beam and refilling; lanes differ in their seeds. */
public final class StandardLoader implements Loader {
    /** Share of the time after which no more blocks are made. */
    private static final double BLOCK_SHARE = 0.1;

    /** Share of the budget for a load of all kinds where some go together or not at all. */
    private static final double WHOLE_SHARE = 0.3;

    private final LongSupplier clock;

    /** Takes time from the clock on the wall. */
    public StandardLoader() {
        this(System::nanoTime);
    }

    /**
     * Takes time from another clock, for measuring on a machine that others use too.
     *
     * @param clock gives nanoseconds; read from the thread that searches
     */
    public StandardLoader(LongSupplier clock) {
        this.clock = clock;
    }

    @Override
    public LoadResult load(LoadRequest request, LoadObserver observer, StopSignal stop) {
        return GroupChoices.asked(request.problem())
                ? byGroups(request, observer, stop)
                : search(request, observer, stop);
    }

    /** Looks for a load of all kinds first, then of groups that could go as a whole and would be more. */
    private LoadResult byGroups(LoadRequest request, LoadObserver observer, StopSignal stop) {
        LoadProblem problem = request.problem();
        LoadResult best = search(with(request, problem, WHOLE_SHARE), observer, stop);
        double room = problem.roomVolume();
        for (GroupChoices.Choice choice : GroupChoices.of(problem, best.share() * room)) {
            if (stop.stopped()) {
                break;
            }
            LoadResult part = search(
                    with(request, choice.problem(), (1 - WHOLE_SHARE) / GroupChoices.most()), progress -> {}, stop);
            Load load = choice.whole(part.load());
            LoadResult found = new LoadResult(
                    load,
                    load.volume() / room,
                    LoadAudit.of(problem, load),
                    best.moves() + part.moves(),
                    best.elapsed().plus(part.elapsed()));
            boolean better = found.faults().size() < best.faults().size()
                    || found.faults().size() == best.faults().size() && found.share() > best.share();
            best = better
                    ? found
                    : new LoadResult(best.load(), best.share(), best.faults(), found.moves(), found.elapsed());
            if (better) {
                observer.progress(new LoadProgress(best.share(), best.elapsed()));
            }
            if (choice.complete(part.load())) {
                break;
            }
        }
        return best;
    }

    private static LoadRequest with(LoadRequest request, LoadProblem problem, double share) {
        Long moves = request.budget().moves();
        Duration time = request.budget().time();
        Budget budget = new Budget(
                moves == null ? null : Long.valueOf(Math.max(1, (long) (moves * share))),
                time == null ? null : Duration.ofNanos(Math.max(1, (long) (time.toNanos() * share))));
        return new LoadRequest(problem, request.seed(), budget, request.lanes(), request.threads());
    }

    private LoadResult search(LoadRequest request, LoadObserver observer, StopSignal stop) {
        long start = clock.getAsLong();
        LoadProblem problem = request.problem();
        Long moves = request.budget().moves();
        requireSoundPins(problem);
        Tuning tuning = Tuning.of(problem, moves == null ? Long.MAX_VALUE : moves / request.lanes());
        BlockTable table = table(request, tuning, start, stop);
        Watch watch = new Watch(problem, observer);
        List<Lane> lanes = new ArrayList<>();
        List<Effort> efforts = new ArrayList<>();
        // With a time, lanes that wait for a thread would find it used up.
        int count = request.budget().time() == null ? request.lanes() : Math.min(request.lanes(), request.threads());
        for (int i = 0; i < count; i++) {
            lanes.add(new Lane(table, tuning, PracticeRule.of(table), Dice.of(request.seed(), i)));
            efforts.add(effort(request.budget(), count, start, stop));
        }
        run(lanes, efforts, request.threads(), watch);
        long used = efforts.stream().mapToLong(Effort::used).sum();
        return best(problem, lanes, used, Duration.ofNanos(clock.getAsLong() - start));
    }

    /** Pinned pieces must hold by themselves, since nothing is put under them. */
    private static void requireSoundPins(LoadProblem problem) {
        List<String> faults =
                LoadAudit.places(problem, new Load(problem.practice().pinned()));
        if (!faults.isEmpty()) {
            throw new IllegalArgumentException("The pinned pieces cannot stay as they are: " + faults.get(0)
                    + " Unpin a piece, or pin what it stands on.");
        }
    }

    private BlockTable table(LoadRequest request, Tuning tuning, long start, StopSignal stop) {
        LoadProblem problem = request.problem();
        Duration time = request.budget().time();
        long end = time == null ? Long.MAX_VALUE : (long) (BLOCK_SHARE * time.toNanos());
        List<Block> blocks = Blocks.of(
                problem,
                tuning.leastFill(),
                tuning.mostBlocks(),
                (one, other) -> PracticeRule.mix(problem, one, other),
                () -> stop.stopped() || clock.getAsLong() - start > end);
        return new BlockTable(problem, blocks, tuning.gamma(), Lightness.of(problem));
    }

    private Effort effort(Budget budget, int lanes, long start, StopSignal stop) {
        Long moves = budget.moves();
        Duration time = budget.time();
        return new Effort(
                moves == null ? Long.MAX_VALUE : Math.max(1, moves / lanes),
                clock,
                start,
                time == null ? 0 : time.toNanos(),
                stop::stopped);
    }

    private static void run(List<Lane> lanes, List<Effort> efforts, int threads, Watch watch) {
        if (threads == 1 || lanes.size() == 1) {
            for (int i = 0; i < lanes.size(); i++) {
                Lane lane = lanes.get(i);
                lane.run(efforts.get(i), () -> watch.improved(lane.best().worth()));
            }
            return;
        }
        ExecutorService executor = Executors.newFixedThreadPool(Math.min(threads, lanes.size()), runnable -> {
            Thread thread = new Thread(runnable, "load-lane");
            thread.setDaemon(true);
            return thread;
        });
        try {
            List<Future<?>> futures = new ArrayList<>();
            for (int i = 0; i < lanes.size(); i++) {
                Lane lane = lanes.get(i);
                Effort effort = efforts.get(i);
                futures.add(executor.submit(
                        () -> lane.run(effort, () -> watch.improved(lane.best().worth()))));
            }
            for (Future<?> future : futures) {
                future.get();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("The search for a load was interrupted.", e);
        } catch (ExecutionException e) {
            throw new IllegalStateException("A lane of the search for a load failed.", e.getCause());
        } finally {
            executor.shutdownNow();
        }
    }

    /** The load with the fewest faults, of those the fullest, of those the first. */
    private static LoadResult best(LoadProblem problem, List<Lane> lanes, long moves, Duration elapsed) {
        LoadResult best = null;
        for (Lane lane : lanes) {
            Load load = Settling.of(problem, lane.load());
            List<String> faults = LoadAudit.of(problem, load);
            double share = load.volume() / problem.roomVolume();
            if (best == null
                    || faults.size() < best.faults().size()
                    || (faults.size() == best.faults().size() && share > best.share())) {
                best = new LoadResult(load, share, faults, moves, elapsed);
            }
        }
        return java.util.Objects.requireNonNull(best, "a search has at least one lane");
    }

    /** Tells an observer of what is better than all before. */
    private static final class Watch {
        private final double roomVolume;
        private final LoadObserver observer;
        private final long start = System.nanoTime();
        private double best;

        Watch(LoadProblem problem, LoadObserver observer) {
            this.roomVolume = problem.roomVolume();
            this.observer = observer;
        }

        synchronized void improved(double worth) {
            if (worth > best) {
                best = worth;
                observer.progress(new LoadProgress(worth / roomVolume, Duration.ofNanos(System.nanoTime() - start)));
            }
        }
    }
}

package org.shelterwright.solver.load.cars;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.LongSupplier;
import org.shelterwright.solver.fit.Budget;
import org.shelterwright.solver.fit.StopSignal;
import org.shelterwright.solver.load.LoadRequest;
import org.shelterwright.solver.load.Loader;
import org.shelterwright.solver.load.model.CargoKind;
import org.shelterwright.solver.load.model.Load;
import org.shelterwright.solver.load.model.LoadProblem;
import org.shelterwright.solver.load.model.Stowed;

/**
 * Loads car after car, each as full as can be, until everything is in; then again and again with other worths: pieces that
 * ended in badly filled cars count more the next time, so that they come early (sequential value correction, after Belov
 * and Scheithauer, Setup and open-stacks minimization in one-dimensional stock cutting, INFORMS Journal on Computing 19
 * (2007); from memory). A load that is found is repeated while its pieces last.
 */
public final class FewestCars {
    private static final long FIRST_MOVES = 1_500;
    private static final long MOST_MOVES = 60_000;
    private static final int PASSES_EACH = 4;

    private final Loader loader;
    private final LongSupplier clock;

    public FewestCars(Loader loader) {
        this(loader, System::nanoTime);
    }

    /**
     * Takes time from another clock, for measuring on a machine that others use too.
     *
     * @param clock gives nanoseconds
     */
    public FewestCars(Loader loader, LongSupplier clock) {
        this.loader = loader;
        this.clock = clock;
    }

    /**
     * Searches until as few cars are found as must be, or the budget is used up.
     *
     * @param problem one car, and everything that is to go
     * @param budget with a time, passes are begun as long as it lasts; with moves, as long as they last
     */
    public CarsResult load(LoadProblem problem, long seed, Budget budget, StopSignal stop) {
        long start = clock.getAsLong();
        List<String> leftOver = new ArrayList<>();
        List<CargoKind> kinds = new ArrayList<>();
        for (CargoKind kind : problem.kinds()) {
            LoadProblem alone = problem.withKinds(List.of(kind.withCount(1)));
            if (loader.load(request(alone, seed, 10), progress -> {}, new StopSignal())
                    .load()
                    .stowed()
                    .isEmpty()) {
                leftOver.add(kind.name());
            } else {
                kinds.add(kind);
            }
        }
        LoadProblem whole = problem.withKinds(kinds);
        Pass pass = new Pass(whole, problem);
        int atLeast = LeastCars.of(whole);
        List<Load> best = List.of();
        long each = FIRST_MOVES;
        long used = 0;
        for (int n = 0; n == 0 || (best.size() > atLeast && !over(budget, used, start) && !stop.stopped()); n++) {
            List<Load> loads = pass.run(seed + n, each);
            used += loads.size() * each;
            if (best.isEmpty() || loads.size() < best.size()) {
                best = loads;
            }
            if (n % PASSES_EACH == PASSES_EACH - 1) {
                each = Math.min(MOST_MOVES, each * 2);
            }
        }
        return new CarsResult(best, atLeast, leftOver, Duration.ofNanos(clock.getAsLong() - start));
    }

    private static LoadRequest request(LoadProblem problem, long seed, long moves) {
        return LoadRequest.single(problem, seed, Budget.moves(moves));
    }

    private boolean over(Budget budget, long used, long start) {
        Long moves = budget.moves();
        Duration time = budget.time();
        return (moves != null && used >= moves) || (time != null && clock.getAsLong() - start >= time.toNanos());
    }

    /** One way through all the cargo, which learns for the next. */
    private final class Pass {
        private final LoadProblem whole;
        private final int[] numbers;
        private final double[] worth;

        Pass(LoadProblem whole, LoadProblem given) {
            this.whole = whole;
            numbers = whole.kinds().stream()
                    .mapToInt(kind -> given.kinds().indexOf(kind))
                    .toArray();
            worth = whole.kinds().stream().mapToDouble(CargoKind::worth).toArray();
        }

        List<Load> run(long seed, long moves) {
            int[] left = whole.kinds().stream().mapToInt(CargoKind::count).toArray();
            List<Load> loads = new ArrayList<>();
            while (Arrays.stream(left).anyMatch(count -> count > 0)) {
                List<Integer> kinds = new ArrayList<>();
                List<CargoKind> stock = new ArrayList<>();
                for (int k = 0; k < left.length; k++) {
                    if (left[k] > 0) {
                        kinds.add(k);
                        stock.add(whole.kinds().get(k).withCount(left[k]).worth(worth[k]));
                    }
                }
                Load found = loader.load(
                                request(whole.withKinds(stock), seed * 1_000 + loads.size(), moves),
                                progress -> {},
                                new StopSignal())
                        .load();
                if (found.stowed().isEmpty()) {
                    throw new IllegalArgumentException("No car can be loaded with what is left, though each piece fits"
                            + " one: limits on groups, mass or balance forbid it. Loosen them.");
                }
                int[] taken = new int[left.length];
                List<Stowed> stowed = new ArrayList<>();
                for (Stowed one : found.stowed()) {
                    int k = kinds.get(one.kind());
                    taken[k]++;
                    stowed.add(new Stowed(numbers[k], one.box()));
                }
                Load load = new Load(stowed);
                do {
                    loads.add(load);
                    learn(load, taken);
                    for (int k = 0; k < left.length; k++) {
                        left[k] -= taken[k];
                    }
                } while (enough(left, taken));
            }
            return loads;
        }

        private static boolean enough(int[] left, int[] taken) {
            for (int k = 0; k < left.length; k++) {
                if (left[k] < taken[k]) {
                    return false;
                }
            }
            return true;
        }

        /** What lies in a badly filled car was hard to place: its worth moves towards room over load. */
        private void learn(Load load, int[] taken) {
            double hard = Math.min(3, whole.roomVolume() / load.volume());
            for (int k = 0; k < worth.length; k++) {
                if (taken[k] > 0) {
                    double weight = 0.3 * taken[k] / whole.kinds().get(k).count();
                    worth[k] = (1 - weight) * worth[k] + weight * hard;
                }
            }
        }
    }
}

package org.shelterwright.solver.bench.micro;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.Warmup;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.solver.fit.kernel.Annealer;
import org.shelterwright.solver.fit.kernel.Best;
import org.shelterwright.solver.fit.kernel.Construction;
import org.shelterwright.solver.fit.kernel.Dice;
import org.shelterwright.solver.fit.kernel.Meter;
import org.shelterwright.solver.fit.kernel.Planes;
import org.shelterwright.solver.fit.kernel.Schedule;
import org.shelterwright.solver.fit.kernel.State;
import org.shelterwright.solver.fit.kernel.Weights;
import org.shelterwright.solver.fit.model.Amounts;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.MomentLimits;
import org.shelterwright.solver.fit.planted.PlantedFit;

/** One move of the annealing, on one thread, over whole rounds from hot to cold, each from where the last ended. */
@org.openjdk.jmh.annotations.State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class KernelMoves {
    private static final int ROUND = 200_000;

    @Param({"10", "20", "40", "60", "80"})
    private int units;

    private Annealer annealer;

    /** Filled by {@link #construct}. */
    @SuppressWarnings("NullAway.Init")
    public KernelMoves() {}

    @Setup
    public void construct() {
        PlantedFit fit = PlantedFit.of(1, units, 0.1).withWishes().withoutWalkways();
        Checker checker = Checker.standard();
        FitProblem problem = FitProblem.of(checker.scene(fit.question()));
        State state = new State(problem);
        Dice dice = Dice.of(1, 1);
        new Construction(state, dice).placeAll(0);
        annealer = new Annealer(
                state,
                dice,
                new Meter(Long.MAX_VALUE, () -> false),
                new Planes(new MomentLimits(checker.book())),
                score -> {});
    }

    @Benchmark
    @OperationsPerInvocation(ROUND)
    public Amounts round() {
        Best best = new Best();
        annealer.round(new Schedule(ROUND, 60, 0.4, new Weights(0.3, 0.3), new Weights(20, 15), 0.5), best);
        return best.score();
    }
}

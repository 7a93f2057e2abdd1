package org.shelterwright.solver.bench.micro;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.solver.fit.planted.PlantedFit;

/** Every limit of a known solution from scratch, the layout resolved anew each time. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 7, time = 1)
@Measurement(iterations = 5, time = 1)
public class FullLedger {
    @Param({"10", "20", "40", "60", "80", "1000"})
    private int units;

    private Checker checker;
    private Layout layout;

    /** Filled by {@link #plant}. */
    @SuppressWarnings("NullAway.Init")
    public FullLedger() {}

    @Setup
    public void plant() {
        checker = Checker.standard();
        layout = PlantedFit.of(1, units, 0.1).solution();
    }

    @Benchmark
    public Ledger check() {
        return checker.check(layout);
    }
}

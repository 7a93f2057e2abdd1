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

/** Every row of restraint from scratch: all fixing groups under all load cases in sixteen directions. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class RestraintGroups {
    @Param({"20", "40", "60", "80"})
    private int units;

    private Checker checker;
    private Layout layout;

    /** Filled by {@link #prepare}. */
    @SuppressWarnings("NullAway.Init")
    public RestraintGroups() {}

    @Setup
    public void prepare() {
        checker = RestraintSetting.checker();
        layout = RestraintSetting.layout(units);
    }

    @Benchmark
    public Ledger check() {
        return checker.check(layout);
    }
}

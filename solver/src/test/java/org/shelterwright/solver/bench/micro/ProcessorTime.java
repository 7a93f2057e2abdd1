package org.shelterwright.solver.bench.micro;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.Collection;
import java.util.List;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.infra.IterationParams;
import org.openjdk.jmh.profile.InternalProfiler;
import org.openjdk.jmh.results.AggregationPolicy;
import org.openjdk.jmh.results.IterationResult;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.ScalarResult;

/** Adds the processor time of the whole process for each operation: unlike the time of day, other work does not blur it. */
public final class ProcessorTime implements InternalProfiler {
    /** Name of the result (ns an operation). */
    public static final String RESULT = "processor";

    private final OperatingSystemMXBean system = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    private long before;

    @Override
    public String getDescription() {
        return "Processor time of the process";
    }

    @Override
    public void beforeIteration(BenchmarkParams benchmark, IterationParams iteration) {
        before = system.getProcessCpuTime();
    }

    @Override
    public Collection<? extends Result<?>> afterIteration(
            BenchmarkParams benchmark, IterationParams iteration, IterationResult result) {
        long used = system.getProcessCpuTime() - before;
        double each = (double) used / result.getMetadata().getAllOps();
        return List.of(new ScalarResult(RESULT, each, "ns/op", AggregationPolicy.AVG));
    }
}

package org.shelterwright.solver.bench;

import java.lang.management.ManagementFactory;
import java.util.Locale;

/** What the figures were taken on. */
final class Machine {
    private static final double IDLE = 0.3;

    private final double loadBefore = load();

    /** One line: cores, Java, and whether other work ran at the beginning. */
    String text() {
        Runtime runtime = Runtime.getRuntime();
        String shared = loadBefore < 0
                ? "Whether other work ran at the same time is not known."
                : loadBefore <= IDLE
                        ? "The machine was otherwise idle at the beginning."
                        : String.format(
                                Locale.ROOT,
                                "**The machine was shared**: %.1f processes were running at the beginning. Trust the ratios, not the times.",
                                loadBefore);
        return String.format(
                Locale.ROOT,
                "Machine: %d cores, %s, Java %s (%s), heap up to %d MB. %s",
                runtime.availableProcessors(),
                System.getProperty("os.name") + " " + System.getProperty("os.arch"),
                System.getProperty("java.version"),
                System.getProperty("java.vm.name"),
                runtime.maxMemory() >> 20,
                shared);
    }

    /** Processor time that this process has used (ns); 0 if the system does not tell. */
    static long cpuNanos() {
        return ManagementFactory.getOperatingSystemMXBean() instanceof com.sun.management.OperatingSystemMXBean system
                ? system.getProcessCpuTime()
                : 0;
    }

    private static double load() {
        return ManagementFactory.getOperatingSystemMXBean().getSystemLoadAverage();
    }
}

package org.shelterwright.layouts.study.results;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The runs that no other beats: none is at least as good by both of two measures and better by one. */
public final class Front {
    private Front() {}

    /**
     * The front, by rising first measure; of runs that are equal by both, all. Runs for which a measure is not known are not in
     * it. Cost: n log n.
     *
     * @throws IllegalArgumentException with a sentence if neither more nor less of a measure is better
     */
    public static List<RunResult> of(List<RunResult> runs, Measure first, Measure second) {
        requireOrder(first);
        requireOrder(second);
        List<RunResult> known = runs.stream()
                .filter(run -> first.of(run).isPresent() && second.of(run).isPresent())
                .sorted(Comparator.comparingDouble((RunResult run) -> badness(first, run))
                        .thenComparingDouble(run -> badness(second, run))
                        .thenComparingInt(RunResult::run))
                .toList();
        List<RunResult> front = new ArrayList<>();
        double least = Double.POSITIVE_INFINITY;
        double at = Double.NaN;
        for (RunResult run : known) {
            double bad = badness(second, run);
            boolean twin = bad == least && badness(first, run) == at;
            if (bad < least || twin) {
                front.add(run);
                least = bad;
                at = badness(first, run);
            }
        }
        front.sort(Comparator.comparingDouble((RunResult run) -> first.of(run).orElseThrow())
                .thenComparingInt(RunResult::run));
        return front;
    }

    private static double badness(Measure measure, RunResult run) {
        double value = measure.of(run).orElseThrow();
        return measure.better() == Measure.Better.MORE ? -value : value;
    }

    private static void requireOrder(Measure measure) {
        if (measure.better() == Measure.Better.NEITHER) {
            throw new IllegalArgumentException("There is no front by \"" + measure.id()
                    + "\": neither more nor less of it is better. Take another measure.");
        }
    }
}

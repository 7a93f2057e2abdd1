package org.shelterwright.solver.order;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.shelterwright.layouts.boltdown.BoltDownPlan;

/**
 * Who does what when. Units are brought in one after the other, in their order, by as many fitters as they need; each is then
 * bolted by one fitter at its place. A rack that is filled on the bench is filled before it comes in, by one fitter, in the first
 * gap that is long enough: that is outside and hinders nobody. Nothing is brought in through a place where somebody works, nobody
 * works where another does, and what carries a unit is bolted before that one comes.
 *
 * @param lengthMinutes end of the last piece of work (min)
 */
public record Schedule(List<Shift> shifts, double lengthMinutes, int fitters) {
    public Schedule {
        shifts = List.copyOf(shifts);
    }

    /**
     * Spreads the steps of a plan over its fitters; of three ways to spread the bench work, the soonest done. Cost: quadratic in
     * the steps.
     */
    public static Schedule of(BoltDownPlan plan) {
        return Arrays.stream(Scheduling.Bench.values())
                .map(bench -> new Scheduling(plan, bench).schedule())
                .min(Comparator.comparingDouble(Schedule::lengthMinutes))
                .orElseThrow();
    }
}

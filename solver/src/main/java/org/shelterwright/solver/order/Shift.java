package org.shelterwright.solver.order;

import java.util.List;

/**
 * A piece of work in time.
 *
 * @param step number of the step, from 1
 * @param bringingIn whether the unit is brought in; otherwise it is bolted and connected at its place
 * @param fitters who work, numbered from 0
 * @param fromMinutes begin (min)
 * @param toMinutes end (min)
 * @param critical whether a delay of it delays the end
 */
public record Shift(
        int step, boolean bringingIn, List<Integer> fitters, double fromMinutes, double toMinutes, boolean critical) {
    public Shift {
        fitters = List.copyOf(fitters);
    }
}

package org.shelterwright.solver.order;

import java.util.List;

/**
 * A piece of work in time.
 *
 * @param step number of the step, from 1
 * @param kind what is done
 * @param fitters who work, numbered from 0
 * @param fromMinutes begin (min)
 * @param toMinutes end (min)
 * @param critical whether a delay of it delays the end
 */
public record Shift(
        int step, Kind kind, List<Integer> fitters, double fromMinutes, double toMinutes, boolean critical) {
    /** What is done. */
    public enum Kind {
        /** A rack is filled on the bench, outside. */
        BENCH,
        /** The unit is brought in. */
        BRINGING_IN,
        /** It is bolted and connected at its place. */
        AT_PLACE
    }

    public Shift {
        fitters = List.copyOf(fitters);
    }

    public boolean bringingIn() {
        return kind == Kind.BRINGING_IN;
    }

    public boolean onBench() {
        return kind == Kind.BENCH;
    }
}

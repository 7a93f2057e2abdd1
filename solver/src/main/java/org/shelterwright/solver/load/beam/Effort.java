package org.shelterwright.solver.load.beam;

import java.util.function.BooleanSupplier;
import java.util.function.LongSupplier;

/**
 * How much of the work that a search may do is done. Work is counted in spaces looked at; with a bound on that alone, the
 * same seed gives the same load on any machine. Not for several threads.
 */
public final class Effort {
    private final long allowance;
    private final LongSupplier clock;
    private final long startNanos;
    private final long nanos;
    private final BooleanSupplier asked;
    private long used;
    private double share;
    private double bound = 1;
    private double goal = Double.POSITIVE_INFINITY;
    private boolean over;

    /**
     * Begins.
     *
     * @param allowance spaces that may be looked at
     * @param clock gives nanoseconds
     * @param startNanos when the time began to run, by the clock
     * @param nanos time that may pass; zero: not limited
     * @param asked whether somebody asks to end
     */
    public Effort(long allowance, LongSupplier clock, long startNanos, long nanos, BooleanSupplier asked) {
        this.allowance = allowance;
        this.clock = clock;
        this.startNanos = startNanos;
        this.nanos = nanos;
        this.asked = asked;
    }

    /** Counts work. */
    public void spend(long steps) {
        used += steps;
        share = (double) used / allowance;
        if (nanos > 0) {
            share = Math.max(share, (double) (clock.getAsLong() - startNanos) / nanos);
        }
        over |= share >= 1 || asked.getAsBoolean();
    }

    /** Sets what a load can be worth at most: when one is, there is nothing left to do. */
    public void aim(double worth) {
        goal = worth;
    }

    /** Tells what the best load is worth. */
    void reached(double worth) {
        over |= worth >= goal;
    }

    /** Sets a share of the work at which to end for now; 1 lifts it. */
    public void bound(double at) {
        bound = at;
    }

    /** Share of the work that is done, from 0 to about 1. */
    public double share() {
        return share;
    }

    public boolean over() {
        return over || share >= bound;
    }

    public long used() {
        return used;
    }
}

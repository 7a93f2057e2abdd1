package org.shelterwright.solver.inside.rack;

/** What weighs how much in an arrangement. */
final class RackCost {
    /** A piece without a place. */
    static final long LEFT_OUT = 1_000_000_000_000_000L;

    /** One unit by which a hard limit is overstepped. */
    static final long HARD = 1_000_000_000_000L;

    /** One unit by which a limit of use is overstepped. */
    static final long MEDIUM = 100_000_000L;

    /** An open height unit through which air flows back. */
    static final long OPEN = 10 * MEDIUM;

    /** No place at all. */
    static final long NEVER = Long.MAX_VALUE / 4;

    private RackCost() {}

    /** Moment of a mass about the lower edge of its bay (kg mm), so that heavy pieces sink. */
    static long moment(long grams, int heightUm) {
        return grams * (heightUm / 1000) / 1000;
    }
}

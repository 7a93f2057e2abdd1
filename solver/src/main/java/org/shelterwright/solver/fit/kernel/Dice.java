package org.shelterwright.solver.fit.kernel;

/**
 * A small random generator of its own, so that a seed gives the same search on every machine and Java version: the
 * splitmix64 sequence (Steele, Lea, Flood: Fast splittable pseudorandom number generators, 2014). Not for several
 * threads.
 */
public final class Dice {
    private long state;

    public Dice(long seed) {
        this.state = seed;
    }

    /** An independent generator for a numbered purpose. */
    public static Dice of(long seed, long number) {
        Dice dice = new Dice(seed * 0x9E3779B97F4A7C15L + number);
        dice.next();
        return new Dice(dice.next());
    }

    public long next() {
        state += 0x9E3779B97F4A7C15L;
        long z = state;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }

    /** A whole number from 0 to bound - 1. */
    public int below(int bound) {
        return (int) (((next() >>> 32) * bound) >>> 32);
    }

    /** A number from 0 (included) to 1 (excluded). */
    public double share() {
        return (next() >>> 11) * 0x1.0p-53;
    }
}

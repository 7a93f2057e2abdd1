package org.shelterwright.solver.fit.model;

/**
 * Moments of mass in one situation, exact: grams times µm, and for the product of both plan coordinates grams times
 * whole mm times whole mm.
 */
public record Moments(long x, long y, long z, long xy) {
    private static final int MM = 1000;

    /** What a mass at a place adds to the product moment. */
    public static long product(long grams, int x, int y) {
        return grams * (x / MM) * (y / MM);
    }
}

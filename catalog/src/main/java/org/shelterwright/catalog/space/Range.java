package org.shelterwright.catalog.space;

/** The range of coordinates: within it, sums and differences of two of them never leave an {@code int}. */
final class Range {
    /** Largest distance from the origin (µm): 500 m. */
    static final int LIMIT = 500_000_000;

    private Range() {}

    static void check(String name, int value) {
        if (value < -LIMIT || value > LIMIT) {
            throw new IllegalArgumentException("The coordinate " + name + " = " + Lengths.format(value)
                    + " mm lies more than 500 m from the origin. Maybe the unit is wrong.");
        }
    }
}

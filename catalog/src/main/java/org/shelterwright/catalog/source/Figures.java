package org.shelterwright.catalog.source;

/** Refuses figures that no physical quantity can have. */
public final class Figures {
    private Figures() {}

    /**
     * Gives back a figure that is finite and not below zero.
     *
     * @throws IllegalArgumentException otherwise, naming the figure
     */
    public static double notNegative(String name, double value) {
        return within(name, value, 0, Double.MAX_VALUE);
    }

    /**
     * Gives back a figure that is finite and above zero.
     *
     * @throws IllegalArgumentException otherwise, naming the figure
     */
    public static double positive(String name, double value) {
        if (!(value > 0) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("The " + name + " of " + value + " must be above zero.");
        }
        return value;
    }

    /**
     * Gives back a figure that lies within bounds, both included.
     *
     * @throws IllegalArgumentException otherwise, naming the figure and the bounds
     */
    public static double within(String name, double value, double low, double high) {
        if (!(value >= low && value <= high) || Double.isInfinite(value)) {
            String bound = high == Double.MAX_VALUE ? "at least " + low : "from " + low + " to " + high;
            throw new IllegalArgumentException("The " + name + " of " + value + " must be " + bound + ".");
        }
        return value;
    }
}

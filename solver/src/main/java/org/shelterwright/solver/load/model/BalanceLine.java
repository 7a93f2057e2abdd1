package org.shelterwright.solver.load.model;

import org.shelterwright.catalog.space.Axis;

/**
 * One linear limit on the moments of mass: {@code constant + Σ m·(perKg + x·alongPerKg + y·acrossPerKg) ≤ 0}, with each
 * piece's mass m (kg) and centre x, y (unit of length of the problem). It must hold in every state of unloading. A centre
 * of mass in a window is two of these, an axle or bogie rating one, and so is a ratio of two bogies or of two sides.
 *
 * @param name as messages call it
 * @param constant from what else weighs on the car (kg, or kg times length, as the other terms)
 * @param scaleKg kg times unit of this line that counts as wholly wrong; brings different lines to one measure
 */
public record BalanceLine(
        String name, double constant, double perKg, double alongPerKg, double acrossPerKg, double scaleKg) {
    public BalanceLine {
        if (!(scaleKg > 0)) {
            throw new IllegalArgumentException("The scale " + scaleKg + " of " + name + " must be above zero.");
        }
    }

    /** The centre of mass of the load lies at or below a coordinate on x or y. */
    public static BalanceLine centreBelow(String name, Axis axis, int at, double scale) {
        return centre(name, axis, at, 1, scale);
    }

    /** The centre of mass of the load lies at or above a coordinate on x or y. */
    public static BalanceLine centreAbove(String name, Axis axis, int at, double scale) {
        return centre(name, axis, at, -1, scale);
    }

    private static BalanceLine centre(String name, Axis axis, int at, int sign, double scale) {
        return new BalanceLine(
                name, 0, -sign * (double) at, axis == Axis.X ? sign : 0, axis == Axis.Y ? sign : 0, scale);
    }

    /**
     * Two supports, such as bogies: the share of the load on the far one, which stands at {@code far}, with the near one
     * at {@code near}, plus what it bears anyway, stays within its rating.
     *
     * @param tareKg what it bears without load
     */
    public static BalanceLine support(String name, int near, int far, double tareKg, double ratingKg) {
        double span = (double) far - near;
        return new BalanceLine(name, tareKg - ratingKg, -near / span, 1 / span, 0, ratingKg);
    }

    /**
     * The heavier of two supports, the one at {@code heavy}, bears at most {@code ratio} times what the one at {@code
     * light} does.
     *
     * @param heavyTareKg what it bears without load
     * @param lightTareKg what the other bears without load
     */
    public static BalanceLine ratio(
            String name, int heavy, int light, double ratio, double heavyTareKg, double lightTareKg) {
        double span = (double) heavy - light;
        // R_heavy = (x - light)/span, R_light = (heavy - x)/span, both for 1 kg at x.
        return new BalanceLine(
                name,
                heavyTareKg - ratio * lightTareKg,
                (-light - ratio * heavy) / span,
                (1 + ratio) / span,
                0,
                Math.max(1, heavyTareKg + lightTareKg));
    }

    /** The left side of the line: above zero, it is broken by that much. */
    public double value(double massKg, double alongKg, double acrossKg) {
        return constant + perKg * massKg + alongPerKg * alongKg + acrossPerKg * acrossKg;
    }
}

package org.shelterwright.layouts.state;

import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;

/**
 * What a mass of 1 kg at a place (x, y, z in m) adds to a quantity: {@code constant + perX·x + perY·y + perZ·z +
 * perXy·x·y}. Total mass, moments of mass, axle loads and wheel loads all have this form.
 */
public record Influence(double constant, double perX, double perY, double perZ, double perXy) {
    public static final Influence NONE = new Influence(0, 0, 0, 0, 0);
    /** The mass itself (kg). */
    public static final Influence MASS = new Influence(1, 0, 0, 0, 0);
    /** Moments of mass about the planes through the origin (kg·m). */
    public static final Influence MOMENT_X = new Influence(0, 1, 0, 0, 0);

    public static final Influence MOMENT_Y = new Influence(0, 0, 1, 0, 0);
    public static final Influence MOMENT_Z = new Influence(0, 0, 0, 1, 0);

    /** An influence that changes along the length only: {@code constant + perX·x}. */
    public static Influence along(double constant, double perX) {
        return new Influence(constant, perX, 0, 0, 0);
    }

    public double at(double x, double y, double z) {
        return constant + perX * x + perY * y + perZ * z + perXy * x * y;
    }

    public double at(Point place) {
        return at(Lengths.metres(place.x()), Lengths.metres(place.y()), Lengths.metres(place.z()));
    }

    public Influence times(double factor) {
        return new Influence(factor * constant, factor * perX, factor * perY, factor * perZ, factor * perXy);
    }

    public Influence plus(Influence other) {
        return new Influence(
                constant + other.constant,
                perX + other.perX,
                perY + other.perY,
                perZ + other.perZ,
                perXy + other.perXy);
    }

    /** The same influence for places told in a frame whose origin lies at {@code origin} of this one's. */
    public Influence seenFrom(Point origin) {
        double x = Lengths.metres(origin.x());
        double y = Lengths.metres(origin.y());
        return new Influence(at(origin), perX + perXy * y, perY + perXy * x, perZ, perXy);
    }

    boolean none() {
        return constant == 0 && !usesPlace();
    }

    boolean usesPlace() {
        return usesPlan() || perZ != 0;
    }

    boolean usesPlan() {
        return perX != 0 || perY != 0 || perXy != 0;
    }
}

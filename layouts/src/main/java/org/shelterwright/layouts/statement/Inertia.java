package org.shelterwright.layouts.statement;

/**
 * Moments and products of inertia about axes through one point, parallel to those of the body (kg·m²). Products are {@code Σ m dx
 * dy} and so on; in the inertia tensor they stand with a minus.
 */
public record Inertia(double xx, double yy, double zz, double xy, double yz, double zx) {
    public static final Inertia NONE = new Inertia(0, 0, 0, 0, 0, 0);

    /** A point mass at a place from the point (m). */
    public static Inertia ofPoint(double massKg, double dx, double dy, double dz) {
        return new Inertia(
                massKg * (dy * dy + dz * dz),
                massKg * (dx * dx + dz * dz),
                massKg * (dx * dx + dy * dy),
                massKg * dx * dy,
                massKg * dy * dz,
                massKg * dz * dx);
    }

    /** A uniform cuboid about its own centre: {@code m (b² + c²) / 12} and so on; sides in m. */
    public static Inertia ofCuboid(double massKg, double a, double b, double c) {
        double twelfth = massKg / 12;
        return new Inertia(twelfth * (b * b + c * c), twelfth * (a * a + c * c), twelfth * (a * a + b * b), 0, 0, 0);
    }

    public Inertia plus(Inertia o) {
        return new Inertia(xx + o.xx, yy + o.yy, zz + o.zz, xy + o.xy, yz + o.yz, zx + o.zx);
    }

    public Inertia minus(Inertia o) {
        return new Inertia(xx - o.xx, yy - o.yy, zz - o.zz, xy - o.xy, yz - o.yz, zx - o.zx);
    }
}

package org.shelterwright.catalog.space;

/**
 * A place or a shift in space.
 *
 * @param x forward (µm)
 * @param y to the left (µm)
 * @param z up (µm)
 */
public record Point(int x, int y, int z) {
    public static final Point ORIGIN = new Point(0, 0, 0);

    public Point {
        Range.check("x", x);
        Range.check("y", y);
        Range.check("z", z);
    }

    /** Takes whole millimetres. */
    public static Point ofMm(int x, int y, int z) {
        return new Point(
                Math.multiplyExact(x, Lengths.MM),
                Math.multiplyExact(y, Lengths.MM),
                Math.multiplyExact(z, Lengths.MM));
    }

    public Point plus(Point shift) {
        return new Point(x + shift.x, y + shift.y, z + shift.z);
    }

    public Point minus(Point other) {
        return new Point(x - other.x, y - other.y, z - other.z);
    }

    public int along(Axis axis) {
        return switch (axis) {
            case X -> x;
            case Y -> y;
            case Z -> z;
        };
    }

    /** The same point with another coordinate on one axis. */
    public Point with(Axis axis, int value) {
        return switch (axis) {
            case X -> new Point(value, y, z);
            case Y -> new Point(x, value, z);
            case Z -> new Point(x, y, value);
        };
    }
}

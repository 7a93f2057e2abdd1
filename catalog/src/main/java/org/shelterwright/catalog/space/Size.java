package org.shelterwright.catalog.space;

/**
 * The extents of a cuboid.
 *
 * @param x depth, along x (µm), above zero
 * @param y width, along y (µm), above zero
 * @param z height, along z (µm), above zero
 */
public record Size(int x, int y, int z) {
    public Size {
        check("x", x);
        check("y", y);
        check("z", z);
    }

    /** Takes whole millimetres. */
    public static Size ofMm(int x, int y, int z) {
        return new Size(
                Math.multiplyExact(x, Lengths.MM),
                Math.multiplyExact(y, Lengths.MM),
                Math.multiplyExact(z, Lengths.MM));
    }

    public int along(Axis axis) {
        return switch (axis) {
            case X -> x;
            case Y -> y;
            case Z -> z;
        };
    }

    /** The cuboid of this size with its low corner at the origin. */
    public Box box() {
        return new Box(0, 0, 0, x, y, z);
    }

    /** Volume (m³). */
    public double volumeM3() {
        return Lengths.metres(x) * Lengths.metres(y) * Lengths.metres(z);
    }

    private static void check(String name, int value) {
        if (value <= 0) {
            throw new IllegalArgumentException(
                    "The size " + name + " = " + Lengths.format(value) + " mm must be above zero.");
        }
        Range.check(name, value);
    }
}

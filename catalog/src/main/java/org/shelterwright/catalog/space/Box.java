package org.shelterwright.catalog.space;

/**
 * An axis-aligned cuboid, from its low corner to its high corner (µm). Two cuboids overlap if they share a volume;
 * touching is not overlapping. A cuboid may be flat (equal coordinates on an axis): it then overlaps nothing.
 */
public record Box(int x0, int y0, int z0, int x1, int y1, int z1) {
    public Box {
        check("x", x0, x1);
        check("y", y0, y1);
        check("z", z0, z1);
    }

    public static Box of(Point low, Size size) {
        return new Box(low.x(), low.y(), low.z(), low.x() + size.x(), low.y() + size.y(), low.z() + size.z());
    }

    public static Box between(Point low, Point high) {
        return new Box(low.x(), low.y(), low.z(), high.x(), high.y(), high.z());
    }

    /** Takes whole millimetres. */
    public static Box ofMm(int x0, int y0, int z0, int x1, int y1, int z1) {
        return between(Point.ofMm(x0, y0, z0), Point.ofMm(x1, y1, z1));
    }

    public Point low() {
        return new Point(x0, y0, z0);
    }

    public Point high() {
        return new Point(x1, y1, z1);
    }

    public int low(Axis axis) {
        return switch (axis) {
            case X -> x0;
            case Y -> y0;
            case Z -> z0;
        };
    }

    public int high(Axis axis) {
        return switch (axis) {
            case X -> x1;
            case Y -> y1;
            case Z -> z1;
        };
    }

    public int extent(Axis axis) {
        return high(axis) - low(axis);
    }

    /** The middle, rounded towards the low corner by at most half a micrometre. */
    public Point centre() {
        return new Point(x0 + (x1 - x0) / 2, y0 + (y1 - y0) / 2, z0 + (z1 - z0) / 2);
    }

    /** Volume (m³). */
    public double volumeM3() {
        return Lengths.metres(x1 - x0) * Lengths.metres(y1 - y0) * Lengths.metres(z1 - z0);
    }

    public boolean flat() {
        return x0 == x1 || y0 == y1 || z0 == z1;
    }

    /** Whether they share at least a point: faces, edges and corners count. */
    public boolean touches(Box o) {
        return x0 <= o.x1 && o.x0 <= x1 && y0 <= o.y1 && o.y0 <= y1 && z0 <= o.z1 && o.z0 <= z1;
    }

    public boolean overlaps(Box o) {
        return x0 < o.x1 && o.x0 < x1 && y0 < o.y1 && o.y0 < y1 && z0 < o.z1 && o.z0 < z1 && !flat() && !o.flat();
    }

    public boolean contains(Box o) {
        return x0 <= o.x0 && o.x1 <= x1 && y0 <= o.y0 && o.y1 <= y1 && z0 <= o.z0 && o.z1 <= z1;
    }

    public boolean contains(Point p) {
        return x0 <= p.x() && p.x() <= x1 && y0 <= p.y() && p.y() <= y1 && z0 <= p.z() && p.z() <= z1;
    }

    /**
     * How far the other must be shifted along one axis to overlap no more: the least over the axes and directions (µm);
     * zero if they do not overlap.
     */
    public int depth(Box o) {
        if (!overlaps(o)) {
            return 0;
        }
        int dx = Math.min(x1 - o.x0, o.x1 - x0);
        int dy = Math.min(y1 - o.y0, o.y1 - y0);
        int dz = Math.min(z1 - o.z0, o.z1 - z0);
        return Math.min(dx, Math.min(dy, dz));
    }

    /** Free distance along an axis between two cuboids (µm); negative by the length that they share. */
    public int gap(Box o, Axis axis) {
        return Math.max(o.low(axis) - high(axis), low(axis) - o.high(axis));
    }

    /**
     * The part that both share; flat where they only touch.
     *
     * @throws IllegalArgumentException if they neither overlap nor touch
     */
    public Box intersection(Box o) {
        return new Box(
                Math.max(x0, o.x0),
                Math.max(y0, o.y0),
                Math.max(z0, o.z0),
                Math.min(x1, o.x1),
                Math.min(y1, o.y1),
                Math.min(z1, o.z1));
    }

    /** The least cuboid that holds both. */
    public Box hull(Box o) {
        return new Box(
                Math.min(x0, o.x0),
                Math.min(y0, o.y0),
                Math.min(z0, o.z0),
                Math.max(x1, o.x1),
                Math.max(y1, o.y1),
                Math.max(z1, o.z1));
    }

    public Box moved(Point shift) {
        return moved(shift.x(), shift.y(), shift.z());
    }

    public Box moved(int dx, int dy, int dz) {
        return new Box(x0 + dx, y0 + dy, z0 + dz, x1 + dx, y1 + dy, z1 + dz);
    }

    /** The volume that this cuboid passes through when it slides along one axis by the given way. */
    public Box swept(Axis axis, int way) {
        int from = Math.min(way, 0);
        int to = Math.max(way, 0);
        return switch (axis) {
            case X -> new Box(x0 + from, y0, z0, x1 + to, y1, z1);
            case Y -> new Box(x0, y0 + from, z0, x1, y1 + to, z1);
            case Z -> new Box(x0, y0, z0 + from, x1, y1, z1 + to);
        };
    }

    /** This cuboid grown by the given lengths on both sides of each axis. */
    public Box grown(int dx, int dy, int dz) {
        return new Box(x0 - dx, y0 - dy, z0 - dz, x1 + dx, y1 + dy, z1 + dz);
    }

    /**
     * Where a moving part may not be: the open cuboid of shifts that make {@code part} overlap this obstacle (the
     * Minkowski sum of this and the mirrored part).
     */
    public Box forbiddenShifts(Box part) {
        return new Box(x0 - part.x1, y0 - part.y1, z0 - part.z1, x1 - part.x0, y1 - part.y0, z1 - part.z0);
    }

    /** The flat cuboid of one face. */
    public Box face(Face face) {
        int at = face.sign() > 0 ? high(face.axis()) : low(face.axis());
        return switch (face.axis()) {
            case X -> new Box(at, y0, z0, at, y1, z1);
            case Y -> new Box(x0, at, z0, x1, at, z1);
            case Z -> new Box(x0, y0, at, x1, y1, at);
        };
    }

    private static void check(String axis, int low, int high) {
        Range.check(axis, low);
        Range.check(axis, high);
        if (low > high) {
            throw new IllegalArgumentException("The low " + axis + " = " + Lengths.format(low)
                    + " mm of a cuboid must not be above its high " + axis + " = " + Lengths.format(high) + " mm.");
        }
    }
}

package org.shelterwright.catalog.space;

/**
 * A turn about the upright axis by a multiple of 90°, positive from x to y. It turns an item within its own size: the
 * low corner of the turned size stays at the origin, so every coordinate stays whole.
 *
 * <p>Worked number: in a size of 600 × 800, the point (100, 200) turned by 90° comes to (600, 100).
 */
public enum QuarterTurn {
    R0(0),
    R90(90),
    R180(180),
    R270(270);

    private static final QuarterTurn[] ALL = values();

    private final int degrees;

    QuarterTurn(int degrees) {
        this.degrees = degrees;
    }

    public int degrees() {
        return degrees;
    }

    /**
     * Finds a turn by its angle.
     *
     * @throws IllegalArgumentException if the angle is not 0, 90, 180 or 270
     */
    public static QuarterTurn ofDegrees(int degrees) {
        for (QuarterTurn turn : ALL) {
            if (turn.degrees == degrees) {
                return turn;
            }
        }
        throw new IllegalArgumentException("The turn of " + degrees + "° must be 0, 90, 180 or 270.");
    }

    public QuarterTurn plus(QuarterTurn other) {
        return ALL[(ordinal() + other.ordinal()) % 4];
    }

    public Size apply(Size size) {
        return this == R0 || this == R180 ? size : new Size(size.y(), size.x(), size.z());
    }

    /** Turns a point of an item of the given size. */
    public Point apply(Point p, Size size) {
        return switch (this) {
            case R0 -> p;
            case R90 -> new Point(size.y() - p.y(), p.x(), p.z());
            case R180 -> new Point(size.x() - p.x(), size.y() - p.y(), p.z());
            case R270 -> new Point(p.y(), size.x() - p.x(), p.z());
        };
    }

    /** Turns a cuboid of an item of the given size; it may reach beyond the size. */
    public Box apply(Box b, Size size) {
        int sx = size.x();
        int sy = size.y();
        return switch (this) {
            case R0 -> b;
            case R90 -> new Box(sy - b.y1(), b.x0(), b.z0(), sy - b.y0(), b.x1(), b.z1());
            case R180 -> new Box(sx - b.x1(), sy - b.y1(), b.z0(), sx - b.x0(), sy - b.y0(), b.z1());
            case R270 -> new Box(b.y0(), sx - b.x1(), b.z0(), b.y1(), sx - b.x0(), b.z1());
        };
    }

    public Axis apply(Axis axis) {
        return apply(axis == Axis.X ? Face.FRONT : axis == Axis.Y ? Face.LEFT : Face.TOP)
                .axis();
    }

    public Face apply(Face face) {
        Face turned = face;
        for (int i = 0; i < ordinal(); i++) {
            turned = switch (turned) {
                case FRONT -> Face.LEFT;
                case LEFT -> Face.REAR;
                case REAR -> Face.RIGHT;
                case RIGHT -> Face.FRONT;
                default -> turned;
            };
        }
        return turned;
    }
}

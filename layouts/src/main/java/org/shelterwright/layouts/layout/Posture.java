package org.shelterwright.layouts.layout;

import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Size;

/** How a loose piece lies in its place, against the frame of the unit that it lies in. */
public enum Posture {
    AS_IS(0, 1, 2),
    TURNED(1, 0, 2),
    ON_SIDE(0, 2, 1),
    ON_SIDE_TURNED(2, 0, 1),
    ON_END(2, 1, 0),
    ON_END_TURNED(1, 2, 0);

    private final int x;
    private final int y;
    private final int z;

    /** The axes of the piece that lie along x, y and z of the unit. */
    Posture(int x, int y, int z) {
        this.x = x;
        this.y = y;
        this.z = z;
    }

    /** Whether the piece keeps its top up. */
    public boolean upright() {
        return z == 2;
    }

    public Size apply(Size size) {
        int[] of = {size.x(), size.y(), size.z()};
        return new Size(of[x], of[y], of[z]);
    }

    /** Brings a point of the piece into the piece as it lies; sides are not told apart. */
    public Point apply(Point point) {
        int[] of = {point.x(), point.y(), point.z()};
        return new Point(of[x], of[y], of[z]);
    }
}

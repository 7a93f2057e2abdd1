package org.shelterwright.app.view;

import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;

/** A principal direction from which a drawing looks at a body. */
public enum Aspect {
    ABOVE(Face.TOP, Axis.X, 1, Axis.Y),
    RIGHT(Face.RIGHT, Axis.X, 1, Axis.Z),
    LEFT(Face.LEFT, Axis.X, -1, Axis.Z),
    REAR(Face.REAR, Axis.Y, -1, Axis.Z);

    private final Face near;
    private final Axis across;
    private final int sign;
    private final Axis up;

    Aspect(Face near, Axis across, int sign, Axis up) {
        this.near = near;
        this.across = across;
        this.sign = sign;
        this.up = up;
    }

    /** The face of the body that is nearest, and is cut away. */
    public Face near() {
        return near;
    }

    /** The axis of the body that lies across the drawing. */
    public Axis across() {
        return across;
    }

    /** The axis of the body that points up in the drawing. */
    public Axis up() {
        return up;
    }

    /** To the right in the drawing (µm). */
    public int right(Point point) {
        return sign * point.along(across);
    }

    /** Upwards in the drawing (µm). */
    public int above(Point point) {
        return point.along(up);
    }

    /** How near the nearest face of a cuboid is (µm); greater is nearer. */
    public int nearness(Box box) {
        return near.sign() > 0 ? box.high(near.axis()) : -box.low(near.axis());
    }

    /** How near the farthest face of a cuboid is (µm). */
    public int farness(Box box) {
        return near.sign() > 0 ? box.low(near.axis()) : -box.high(near.axis());
    }
}

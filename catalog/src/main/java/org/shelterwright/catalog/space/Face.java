package org.shelterwright.catalog.space;

/** A face of a cuboid, or of the inside of a body, named by where it looks or lies in the frame of ISO 8855. */
public enum Face {
    FRONT(Axis.X, 1),
    REAR(Axis.X, -1),
    LEFT(Axis.Y, 1),
    RIGHT(Axis.Y, -1),
    TOP(Axis.Z, 1),
    BOTTOM(Axis.Z, -1);

    private final Axis axis;
    private final int sign;

    Face(Axis axis, int sign) {
        this.axis = axis;
        this.sign = sign;
    }

    /** The axis that stands square on the face. */
    public Axis axis() {
        return axis;
    }

    /** +1 if the outward normal points along the axis, -1 if against it. */
    public int sign() {
        return sign;
    }

    public Face opposite() {
        return switch (this) {
            case FRONT -> REAR;
            case REAR -> FRONT;
            case LEFT -> RIGHT;
            case RIGHT -> LEFT;
            case TOP -> BOTTOM;
            case BOTTOM -> TOP;
        };
    }

    public boolean upright() {
        return axis != Axis.Z;
    }
}

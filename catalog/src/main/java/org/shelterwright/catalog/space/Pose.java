package org.shelterwright.catalog.space;

/**
 * Where a unit stands: the low corner of its turned size, and its turn.
 *
 * @param at low corner (rear, right, bottom) of the turned size in the frame of the body
 * @param yaw turn about the upright axis
 */
public record Pose(Point at, QuarterTurn yaw) {
    public static Pose at(Point at) {
        return new Pose(at, QuarterTurn.R0);
    }

    /** The cuboid that a unit of the given size takes at this pose. */
    public Box outline(Size size) {
        return Box.of(at, yaw.apply(size));
    }

    /** Brings a cuboid from the frame of an item of the given size into the frame of the body. */
    public Box apply(Box box, Size size) {
        return yaw.apply(box, size).moved(at);
    }

    /** Brings a point from the frame of an item of the given size into the frame of the body. */
    public Point apply(Point point, Size size) {
        return yaw.apply(point, size).plus(at);
    }

    public Face apply(Face face) {
        return yaw.apply(face);
    }

    public Pose moved(Point shift) {
        return new Pose(at.plus(shift), yaw);
    }
}

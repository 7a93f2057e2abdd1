package org.shelterwright.catalog.item;

import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;

/**
 * Where a cable leaves a unit.
 *
 * @param at in the frame of the item
 * @param connector such as "N" or "8P8C"
 */
public record Port(String name, Point at, Face face, CableClass cableClass, String connector) {
    /** How far a plug reaches out of its port (µm; common practice). */
    private static final int PLUG_DEPTH = 25 * Lengths.MM;

    /** Half the width of a plug (µm; common practice). */
    private static final int PLUG_HALF = 15 * Lengths.MM;

    /** The room before it that a plug fills, in the frame of the item. */
    public Box plugRoom() {
        Box point = Box.between(at, at);
        Point out = at.plus(new Point(out(Axis.X), out(Axis.Y), out(Axis.Z)));
        return point.hull(Box.between(out, out)).grown(side(Axis.X), side(Axis.Y), side(Axis.Z));
    }

    private int out(Axis axis) {
        return face.axis() == axis ? face.sign() * PLUG_DEPTH : 0;
    }

    private int side(Axis axis) {
        return face.axis() == axis ? 0 : PLUG_HALF;
    }
}

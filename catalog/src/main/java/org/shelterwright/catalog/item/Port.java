package org.shelterwright.catalog.item;

import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;

/**
 * Where a cable leaves a unit.
 *
 * @param at in the frame of the item
 * @param connector such as "N" or "8P8C"
 */
public record Port(String name, Point at, Face face, CableClass cableClass, String connector) {
    /**
     * The room before it that a plug fills, in the frame of the item.
     *
     * @param depth how far the plug and the bend behind it reach out of the port (µm)
     * @param width of the plug, across, in the middle of which the port is (µm)
     */
    public Box plugRoom(int depth, int width) {
        Box point = Box.between(at, at);
        Point out = at.plus(new Point(out(Axis.X, depth), out(Axis.Y, depth), out(Axis.Z, depth)));
        return point.hull(Box.between(out, out))
                .grown(side(Axis.X, width / 2), side(Axis.Y, width / 2), side(Axis.Z, width / 2));
    }

    private int out(Axis axis, int depth) {
        return face.axis() == axis ? face.sign() * depth : 0;
    }

    private int side(Axis axis, int half) {
        return face.axis() == axis ? 0 : half;
    }
}

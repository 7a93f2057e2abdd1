package org.shelterwright.app.desk.hand;

import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Millimetres;
import org.shelterwright.catalog.space.Point;

/**
 * The distance from what is dragged to a neighbour.
 *
 * @param axis along which it is measured
 * @param high whether the neighbour lies on the high side
 * @param from on the face of what is dragged, in the frame of the body
 * @param to on the face of the neighbour; differs from {@code from} on the axis only
 * @param length below zero if both stand into each other (µm)
 * @param name of the neighbour, such as "Desk" or "the left wall"
 * @param words such as "62 to Desk"
 */
public record Clearance(
        Axis axis,
        boolean high,
        Point from,
        Point to,
        @Millimetres int length,
        String name,
        String words) {
    /** The same distance in other words. */
    public Clearance saying(String other) {
        return new Clearance(axis, high, from, to, length, name, other);
    }
}

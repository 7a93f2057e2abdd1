package org.shelterwright.layouts.layout;

import org.shelterwright.catalog.space.Axis;

/**
 * What the search must leave as it is.
 *
 * @param x its place along the body
 * @param y its place across the body
 * @param z its height
 * @param turn its turn, and what it is mounted on
 */
public record Pin(boolean x, boolean y, boolean z, boolean turn) {
    public static final Pin NONE = new Pin(false, false, false, false);
    public static final Pin ALL = new Pin(true, true, true, true);

    /** Whether the place on an axis is kept. */
    public boolean holds(Axis axis) {
        return switch (axis) {
            case X -> x;
            case Y -> y;
            case Z -> z;
        };
    }

    /** With the place on an axis kept, or not. */
    public Pin with(Axis axis, boolean kept) {
        return new Pin(axis == Axis.X ? kept : x, axis == Axis.Y ? kept : y, axis == Axis.Z ? kept : z, turn);
    }

    public boolean whole() {
        return x && y && z && turn;
    }
}

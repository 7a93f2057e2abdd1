package org.shelterwright.catalog.item;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;

/**
 * A part that moves: its sweep must stay free of solids on station, and it must be secured on the road.
 *
 * @param name such as "front door" or "top drawer"
 * @param sweep the least cuboid that holds the whole movement, in the frame of the item
 * @param securedBy what holds it on the road, such as "latch"; {@code null} if not stated
 * @param hinge the side of the sweep that a door, lid or flap hangs at, in the frame of the item; {@code null} if it slides or
 *     is not known
 */
public record MovablePart(
        String name,
        Kind kind,
        Box sweep,
        @Nullable String securedBy,
        @Nullable Face hinge) {
    public MovablePart {
        if (sweep.flat()) {
            throw new IllegalArgumentException("The sweep of \"" + name + "\" has no thickness.");
        }
        if (hinge != null && (kind == Kind.DRAWER || kind == Kind.SLIDE_OUT)) {
            throw new IllegalArgumentException("\"" + name + "\" slides, and so has no hinge.");
        }
    }

    /** A part of which the side of the hinge is not known. */
    public MovablePart(String name, Kind kind, Box sweep, @Nullable String securedBy) {
        this(name, kind, sweep, securedBy, null);
    }

    /** How a part moves. */
    public enum Kind {
        DOOR,
        LID,
        DRAWER,
        SLIDE_OUT,
        FLAP
    }
}

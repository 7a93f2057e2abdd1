package org.shelterwright.catalog.item;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Box;

/**
 * A part that moves: its sweep must stay free of solids on station, and it must be secured on the road.
 *
 * @param name such as "front door" or "top drawer"
 * @param sweep the least cuboid that holds the whole movement, in the frame of the item
 * @param securedBy what holds it on the road, such as "latch"; {@code null} if not stated
 */
public record MovablePart(
        String name, Kind kind, Box sweep, @Nullable String securedBy) {
    public MovablePart {
        if (sweep.flat()) {
            throw new IllegalArgumentException("The sweep of \"" + name + "\" has no thickness.");
        }
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

package org.shelterwright.layouts.layout;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Pose;

/**
 * Where a unit is and what holds it. On a wall, the wall is the one that the back of the unit looks to.
 *
 * @param host id of the unit that carries it, when mounted on or under a unit; otherwise {@code null}
 * @param pose in the frame of the body
 */
public record Place(Surface surface, @Nullable String host, Pose pose) {
    public Place {
        boolean hosted = surface == Surface.ON_UNIT || surface == Surface.UNDER_UNIT;
        if (hosted != (host != null)) {
            throw new IllegalArgumentException(
                    hosted
                            ? "A unit mounted on or under another must name it."
                            : "Only a unit mounted on or under" + " another may name a host.");
        }
    }

    public static Place onFloor(Pose pose) {
        return new Place(Surface.FLOOR, null, pose);
    }

    public Place with(Pose other) {
        return new Place(surface, host, other);
    }
}

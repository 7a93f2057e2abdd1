package org.shelterwright.layouts.ledger.fit;

import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.layouts.layout.Place;

/** Which face of a unit lies on what it is mounted on. */
public final class MountFace {
    private MountFace() {}

    /** In the frame of the item: bottom on a floor or unit, back (rear) on a wall, top under a roof or unit. */
    public static Face ofItem(Surface surface) {
        return switch (surface) {
            case FLOOR, ON_UNIT -> Face.BOTTOM;
            case WALL -> Face.REAR;
            case ROOF, UNDER_UNIT -> Face.TOP;
        };
    }

    /** In the frame of the body; of a unit on a wall it names that wall. */
    public static Face of(Place place) {
        return place.pose().apply(ofItem(place.surface()));
    }
}

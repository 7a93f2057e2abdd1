package org.shelterwright.catalog.sliding;

import org.shelterwright.catalog.space.Point;

/**
 * A place on a way. Two that follow each other differ on one axis of the shift only, or in the turn only, or in that the thing
 * is laid down.
 *
 * @param quarters turns by 90° about the pivot since the start, 0 to 3
 * @param shift from the start (µm)
 * @param lying whether it is tilted over on one side
 */
public record Stage(int quarters, Point shift, boolean lying) {
    public static final Stage START = new Stage(0, Point.ORIGIN);

    public Stage {
        if (quarters < 0 || quarters > 3) {
            throw new IllegalArgumentException("A turn is 0 to 3 quarters, not " + quarters + ".");
        }
    }

    /** A place of a thing that stands upright. */
    public Stage(int quarters, Point shift) {
        this(quarters, shift, false);
    }

    /** Whether the thing only slides between this place and another. */
    public boolean slidesTo(Stage other) {
        return quarters == other.quarters() && lying == other.lying();
    }
}

package org.shelterwright.catalog.body;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;

/**
 * A hole in a wall, the floor or the roof through which people, air or equipment pass.
 *
 * @param wall the inside surface that it lies in
 * @param area clear opening: a flat cuboid in that surface, in the frame of the body
 * @param exit whether people leave by it
 * @param swing space inside the body that its leaf needs; {@code null} if it opens outward or slides
 * @param hinge the side of the opening that its leaf hangs at, square to the wall; {@code null} if it slides or is not known
 */
public record Opening(
        String name,
        Kind kind,
        Face wall,
        Box area,
        boolean exit,
        @Nullable Box swing,
        @Nullable Face hinge) {
    public Opening {
        if (area.extent(wall.axis()) != 0) {
            throw new IllegalArgumentException("The area of opening \"" + name + "\" must be flat in its wall.");
        }
        if (hinge != null && hinge.axis() == wall.axis()) {
            throw new IllegalArgumentException(
                    "The hinge of opening \"" + name + "\" must be at a side of it, not in front of it or behind it.");
        }
    }

    /** An opening of which the side of the hinge is not known. */
    public Opening(String name, Kind kind, Face wall, Box area, boolean exit, @Nullable Box swing) {
        this(name, kind, wall, area, exit, swing, null);
    }

    /** What an opening is for. */
    public enum Kind {
        DOOR,
        HATCH,
        WINDOW,
        REMOVABLE_PANEL
    }
}

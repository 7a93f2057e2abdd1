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
 */
public record Opening(
        String name,
        Kind kind,
        Face wall,
        Box area,
        boolean exit,
        @Nullable Box swing) {
    public Opening {
        if (area.extent(wall.axis()) != 0) {
            throw new IllegalArgumentException("The area of opening \"" + name + "\" must be flat in its wall.");
        }
    }

    /** What an opening is for. */
    public enum Kind {
        DOOR,
        HATCH,
        WINDOW,
        REMOVABLE_PANEL
    }
}

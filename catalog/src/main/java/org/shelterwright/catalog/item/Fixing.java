package org.shelterwright.catalog.item;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;

/**
 * A bolt of an item.
 *
 * @param name such as "F1"
 * @param at where its axis meets the surface that it goes into, in the frame of the item
 * @param face the face of the item through which it leaves (bottom: into the floor)
 * @param thread such as "M10"
 * @param grade property class, such as "8.8"; {@code null} if not stated
 * @param toolZone space for hand and tool, in the frame of the item; {@code null} if not stated
 * @param slot axis of the item along which its hole is slotted, so that it bears no shear that way; {@code null}: a round hole
 */
public record Fixing(
        String name,
        Point at,
        Face face,
        String thread,
        @Nullable String grade,
        @Nullable Box toolZone,
        @Nullable Axis slot) {
    public Fixing {
        if (slot == face.axis()) {
            throw new IllegalArgumentException(
                    "The slot of fixing \"" + name + "\" must run along the face that it leaves through, "
                            + "not square to it as " + slot.name().toLowerCase(Locale.ROOT) + " is.");
        }
    }

    /** A bolt in a round hole. */
    public Fixing(String name, Point at, Face face, String thread, @Nullable String grade, @Nullable Box toolZone) {
        this(name, at, face, thread, grade, toolZone, null);
    }
}

package org.shelterwright.catalog.item;

import org.jspecify.annotations.Nullable;
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
 */
public record Fixing(
        String name,
        Point at,
        Face face,
        String thread,
        @Nullable String grade,
        @Nullable Box toolZone) {}

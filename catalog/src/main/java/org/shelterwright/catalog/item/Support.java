package org.shelterwright.catalog.item;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Millimetres;
import org.shelterwright.catalog.space.Rect;

/**
 * A level face of an item that carries other units, standing on it or hanging under it.
 *
 * @param name such as "table top"
 * @param area in the frame of the item
 * @param height above the bottom of the item (µm)
 * @param under true if units hang under it, false if they stand on it
 * @param ratingKg mass that it carries on the road (kg); {@code null} if not known
 */
public record Support(
        String name,
        Rect area,
        @Millimetres int height,
        boolean under,
        @Nullable Double ratingKg) {}

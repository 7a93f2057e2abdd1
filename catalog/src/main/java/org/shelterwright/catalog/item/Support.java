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
 * @param pullOutN what it bears at each fixing that goes into it, square to it (N); {@code null} if not known
 * @param shearN the same along it (N); {@code null} if not known
 */
public record Support(
        String name,
        Rect area,
        @Millimetres int height,
        boolean under,
        @Nullable Double ratingKg,
        @Nullable Double pullOutN,
        @Nullable Double shearN) {
    /** A face of which no strength at fixings is known. */
    public Support(String name, Rect area, int height, boolean under, @Nullable Double ratingKg) {
        this(name, area, height, under, ratingKg, null, null);
    }
}

package org.shelterwright.catalog.transit;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Millimetres;

/**
 * The loading floor of a car and the space above it.
 *
 * @param length usable, along x (µm)
 * @param width usable, drop sides up (µm)
 * @param clearHeight above the floor (µm); {@code null} if it is open above
 * @param lowest height of the floor above rail or ground, laden and worn (µm)
 * @param highest height of the floor above rail or ground, empty and new (µm)
 * @param material what the floor is of
 * @param section where the space above the floor narrows with height, as half widths; empty if it does not
 */
public record Deck(
        @Millimetres int length,
        @Millimetres int width,
        @Nullable @Millimetres Integer clearHeight,
        @Nullable @Millimetres Integer lowest,
        @Nullable @Millimetres Integer highest,
        FloorMaterial material,
        List<Step> section) {
    public Deck {
        section = List.copyOf(section);
        if (length <= 0 || width <= 0) {
            throw new IllegalArgumentException("The deck of " + Lengths.format(length) + " x " + Lengths.format(width)
                    + " mm must be above zero in both.");
        }
        if (lowest != null && highest != null && lowest > highest) {
            throw new IllegalArgumentException("The lowest floor height of " + Lengths.format(lowest)
                    + " mm must not be above the highest of " + Lengths.format(highest) + " mm.");
        }
        Step.requireRising(section);
    }
}

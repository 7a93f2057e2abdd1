package org.shelterwright.catalog.item;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Millimetres;

/**
 * How an item may be mounted.
 *
 * @param surfaces what it may stand on or hang from; at least one
 * @param lowestAbove least height of its bottom above the floor when on a wall (µm); {@code null}: any
 * @param highestAbove greatest height of its bottom above the floor when on a wall (µm); {@code null}: any
 * @param loose true if it is not bolted: stowed on the road, free on station
 */
public record Mounting(
        Set<Surface> surfaces,
        @Nullable @Millimetres Integer lowestAbove,
        @Nullable @Millimetres Integer highestAbove,
        boolean loose) {
    public Mounting {
        surfaces = Set.copyOf(surfaces);
        if (surfaces.isEmpty()) {
            throw new IllegalArgumentException("An item must be mountable on at least one surface.");
        }
        if (lowestAbove != null && highestAbove != null && lowestAbove > highestAbove) {
            throw new IllegalArgumentException("The lowest mounting height must not be above the highest.");
        }
    }
}

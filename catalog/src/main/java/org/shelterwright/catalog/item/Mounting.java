package org.shelterwright.catalog.item;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Figures;
import org.shelterwright.catalog.space.Millimetres;

/**
 * How an item may be mounted.
 *
 * @param surfaces what it may stand on or hang from; at least one
 * @param lowestAbove least height of its bottom above the floor when on a wall (µm); {@code null}: any
 * @param highestAbove greatest height of its bottom above the floor when on a wall (µm); {@code null}: any
 * @param loose true if it is not bolted: stowed on the road, free on station
 * @param roadHoldN what the strap, latch or tray that holds it on the road bears, in any direction (N); {@code null} if not
 *     known, or not loose
 */
public record Mounting(
        Set<Surface> surfaces,
        @Nullable @Millimetres Integer lowestAbove,
        @Nullable @Millimetres Integer highestAbove,
        boolean loose,
        @Nullable Double roadHoldN) {
    public Mounting {
        surfaces = Set.copyOf(surfaces);
        if (roadHoldN != null) {
            Figures.positive("hold on the road (N)", roadHoldN);
        }
        if (surfaces.isEmpty()) {
            throw new IllegalArgumentException("An item must be mountable on at least one surface.");
        }
        if (lowestAbove != null && highestAbove != null && lowestAbove > highestAbove) {
            throw new IllegalArgumentException("The lowest mounting height must not be above the highest.");
        }
    }

    /** A mounting without a known hold on the road. */
    public Mounting(
            Set<Surface> surfaces, @Nullable Integer lowestAbove, @Nullable Integer highestAbove, boolean loose) {
        this(surfaces, lowestAbove, highestAbove, loose, null);
    }
}

package org.shelterwright.catalog.item;

import org.shelterwright.catalog.source.Figures;
import org.shelterwright.catalog.space.Box;

/**
 * Space inside an item for loose pieces.
 *
 * @param inside in the frame of the item
 * @param ratingKg mass that it may hold (kg)
 */
public record Stowage(String name, Box inside, double ratingKg) {
    public Stowage {
        Figures.notNegative("stowage rating (kg)", ratingKg);
    }
}

package org.shelterwright.catalog.transit;

import org.shelterwright.catalog.source.Figures;

/**
 * The greatest load of a wagon on lines of a category.
 *
 * @param category letter of the line categories, such as "C" for C2 to C4
 * @param loadKg load (kg)
 */
public record CategoryLoad(String category, double loadKg) {
    public CategoryLoad {
        Figures.positive("load limit on category " + category + " (kg)", loadKg);
    }
}

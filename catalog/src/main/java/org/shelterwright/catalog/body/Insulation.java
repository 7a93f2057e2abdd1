package org.shelterwright.catalog.body;

import org.shelterwright.catalog.source.Figures;

/**
 * How heat passes through a body. The values hold for outside areas, with frames and bridges in them.
 *
 * @param wallsU heat passage of the walls (W/(m²·K))
 * @param roofU the same of the roof
 * @param floorU the same of the floor
 * @param openingsU the same of doors, hatches and windows
 * @param absorptance share of the sun that the outside takes up
 * @param airChangesPerHour outside air that leaks in, in room volumes an hour
 */
public record Insulation(
        double wallsU, double roofU, double floorU, double openingsU, double absorptance, double airChangesPerHour) {
    private static final double MOST_U = 20;

    public Insulation {
        Figures.within("heat passage of the walls (W/(m²·K))", wallsU, 0, MOST_U);
        Figures.within("heat passage of the roof (W/(m²·K))", roofU, 0, MOST_U);
        Figures.within("heat passage of the floor (W/(m²·K))", floorU, 0, MOST_U);
        Figures.within("heat passage of the openings (W/(m²·K))", openingsU, 0, MOST_U);
        Figures.within("absorptance", absorptance, 0, 1);
        Figures.within("air changes per hour", airChangesPerHour, 0, 100);
    }
}

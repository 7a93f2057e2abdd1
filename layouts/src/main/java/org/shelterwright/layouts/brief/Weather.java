package org.shelterwright.layouts.brief;

import org.shelterwright.catalog.source.Figures;

/**
 * The design conditions of one state.
 *
 * @param outsideC outside air (°C)
 * @param roomLeastC room air that heating must hold at least (°C)
 * @param roomMostC room air that cooling must hold at most (°C)
 * @param roofSunWm2 sun on the roof (W/m²)
 * @param wallSunWm2 sun on the walls, mean of all four (W/m²)
 * @param moistureGKg water in the outside air above that of the room (g/kg of dry air); 0 if the outside is drier
 */
public record Weather(
        double outsideC,
        double roomLeastC,
        double roomMostC,
        double roofSunWm2,
        double wallSunWm2,
        double moistureGKg) {
    public Weather {
        Figures.within("outside temperature (°C)", outsideC, -60, 60);
        Figures.within("least room temperature (°C)", roomLeastC, -40, 60);
        Figures.within("greatest room temperature (°C)", roomMostC, roomLeastC, 60);
        Figures.within("sun on the roof (W/m²)", roofSunWm2, 0, 1400);
        Figures.within("sun on the walls (W/m²)", wallSunWm2, 0, 1400);
        Figures.within("moisture (g/kg)", moistureGKg, 0, 40);
    }
}

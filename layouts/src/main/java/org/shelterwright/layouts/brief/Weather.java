package org.shelterwright.layouts.brief;

import org.shelterwright.catalog.source.Figures;

/**
 * The design conditions of one state.
 *
 * @param outsideC outside air (°C)
 * @param roomC room air that must be held: at most in the heat, at least in the cold (°C)
 * @param roofSunWm2 sun on the roof (W/m²)
 * @param wallSunWm2 sun on the walls, mean of all four (W/m²)
 * @param moistureGKg water in the outside air above that of the room (g/kg of dry air); 0 if the outside is drier
 */
public record Weather(double outsideC, double roomC, double roofSunWm2, double wallSunWm2, double moistureGKg) {
    public Weather {
        Figures.within("outside temperature (°C)", outsideC, -60, 60);
        Figures.within("room temperature (°C)", roomC, -20, 60);
        Figures.within("sun on the roof (W/m²)", roofSunWm2, 0, 1400);
        Figures.within("sun on the walls (W/m²)", wallSunWm2, 0, 1400);
        Figures.within("moisture (g/kg)", moistureGKg, 0, 40);
    }
}

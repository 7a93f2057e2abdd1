package org.shelterwright.catalog.item;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Figures;

/**
 * What an item does to the air of the room.
 *
 * @param coolingW heat that it takes out at its rated outside temperature, that of moisture included (W); {@code null} if
 *     it does not cool
 * @param coolingAtC its rated outside temperature (°C); {@code null} if it does not cool or it is not known
 * @param coolingPerKelvin share of the cooling lost for each kelvin above that; {@code null} if not known
 * @param heatingW heat that it gives (W); {@code null} if it does not heat
 * @param freshAirM3h outside air that it brings in (m³/h); {@code null} if it brings in none
 * @param exhaustM3h air that it draws out of the room, which outside air replaces (m³/h); {@code null} if none
 */
public record AirHandling(
        @Nullable Double coolingW,
        @Nullable Double coolingAtC,
        @Nullable Double coolingPerKelvin,
        @Nullable Double heatingW,
        @Nullable Double freshAirM3h,
        @Nullable Double exhaustM3h) {
    public AirHandling {
        requireNotNegative("cooling (W)", coolingW);
        requireNotNegative("share of cooling lost for a kelvin", coolingPerKelvin);
        requireNotNegative("heating (W)", heatingW);
        requireNotNegative("fresh air (m³/h)", freshAirM3h);
        requireNotNegative("exhaust (m³/h)", exhaustM3h);
    }

    private static void requireNotNegative(String name, @Nullable Double value) {
        if (value != null) {
            Figures.notNegative(name, value);
        }
    }
}

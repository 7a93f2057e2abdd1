package org.shelterwright.layouts.cable;

import org.jspecify.annotations.Nullable;

/**
 * What a wire carries.
 *
 * @param voltageV nominal voltage; of three phases that between a line and the neutral (V)
 * @param phases 1 or 3
 * @param currentA greatest current in each line (A)
 * @param state operating state that governs; "always" if the current is that of the data
 * @param gap what is missing and where to give it; {@code null} if voltage and current are known
 */
public record WireDuty(
        double voltageV,
        int phases,
        double currentA,
        String state,
        @Nullable String gap) {
    static WireDuty missing(String gap) {
        return new WireDuty(0, 1, 0, "always", gap);
    }
}

package org.shelterwright.catalog.item;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Figures;

/**
 * An inverter, charger or power supply, alone or in one case.
 *
 * @param outVA apparent power that it gives without end when it converts (VA; W for dc); {@code null} if it only charges
 * @param peakVA the same while something starts (VA); {@code null} if not known
 * @param passA current that it passes on unconverted (A); {@code null} if it passes none
 * @param chargeA current that it charges with, loads of the battery included (A); {@code null} if it charges nothing
 * @param efficiency power out over power in when it converts or charges
 * @param standingW power that it takes while it is on, whatever it gives (W)
 */
public record Converter(
        @Nullable Double outVA,
        @Nullable Double peakVA,
        @Nullable Double passA,
        @Nullable Double chargeA,
        double efficiency,
        double standingW) {
    public Converter {
        Figures.within("efficiency", efficiency, 0.1, 1);
        Figures.notNegative("standing power (W)", standingW);
    }
}

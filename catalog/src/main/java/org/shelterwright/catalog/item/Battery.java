package org.shelterwright.catalog.item;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Figures;

/**
 * A battery as it is wired in its box.
 *
 * @param voltageV nominal voltage (V)
 * @param capacityAh rated capacity (Ah)
 * @param ratedHours time over which the rated capacity holds (h), such as 20
 * @param peukert exponent of Peukert's law, 1 for a battery whose capacity does not depend on the current
 * @param usableShare share of the capacity that may be taken out
 * @param peakA current that it gives while something starts (A); {@code null} if not known
 * @param chargeA greatest charging current (A); {@code null} if not known
 * @param chargeVoltageV voltage while it is charged (V)
 */
public record Battery(
        double voltageV,
        double capacityAh,
        double ratedHours,
        double peukert,
        double usableShare,
        @Nullable Double peakA,
        @Nullable Double chargeA,
        double chargeVoltageV) {
    public Battery {
        Figures.positive("voltage (V)", voltageV);
        Figures.positive("capacity (Ah)", capacityAh);
        Figures.positive("rated time (h)", ratedHours);
        Figures.within("Peukert exponent", peukert, 1, 2);
        Figures.within("usable share", usableShare, 0, 1);
        Figures.within("charging voltage (V)", chargeVoltageV, voltageV, 2 * voltageV);
    }
}

package org.shelterwright.layouts.brief;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Figures;

/**
 * What a wire carries, where that does not follow from the units at its ends. What is not stated is {@code null}.
 *
 * @param voltageV nominal voltage; of three phases that between a line and the neutral (V)
 * @param phases 1 or 3; {@code null}: 1
 * @param currentA greatest current (A)
 * @param dropShare greatest voltage drop as a share of the nominal voltage; {@code null}: that of the rules
 * @param frequencyMHz of a line that carries signals (MHz)
 * @param lossDb greatest loss at that frequency (dB)
 */
public record Duty(
        @Nullable Double voltageV,
        @Nullable Integer phases,
        @Nullable Double currentA,
        @Nullable Double dropShare,
        @Nullable Double frequencyMHz,
        @Nullable Double lossDb) {
    public Duty {
        positive("voltage (V)", voltageV);
        positive("current (A)", currentA);
        positive("frequency (MHz)", frequencyMHz);
        positive("loss (dB)", lossDb);
        if (dropShare != null) {
            Figures.within("voltage drop as a share", dropShare, 0.0001, 0.5);
        }
        if (phases != null && phases != 1 && phases != 3) {
            throw new IllegalArgumentException("The phases of a duty, " + phases + ", must be 1 or 3.");
        }
    }

    private static void positive(String name, @Nullable Double value) {
        if (value != null) {
            Figures.positive(name, value);
        }
    }
}

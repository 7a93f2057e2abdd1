package org.shelterwright.catalog.cable;

import org.shelterwright.catalog.source.Figures;

/**
 * The conductors of a cable, all alike.
 *
 * @param count how many, the protective one included
 * @param areaMm2 nominal cross-section of each (mm²)
 * @param strandClass class of stranding after IEC 60228: 1, 2, 5 or 6
 * @param ohmPerKm greatest resistance of each at 20 °C, direct current (Ω/km)
 */
public record Conductors(int count, double areaMm2, int strandClass, double ohmPerKm) {
    private static final int MOST = 1_000;

    public Conductors {
        Figures.within("number of conductors", count, 1, MOST);
        Figures.positive("cross-section (mm²)", areaMm2);
        Figures.positive("resistance (Ω/km)", ohmPerKm);
        if (strandClass != 1 && strandClass != 2 && strandClass != 5 && strandClass != 6) {
            throw new IllegalArgumentException(
                    "The class of stranding of " + strandClass + " must be 1, 2, 5 or 6 (IEC 60228).");
        }
    }
}

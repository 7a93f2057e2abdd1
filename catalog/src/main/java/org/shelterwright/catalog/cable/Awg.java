package org.shelterwright.catalog.cable;

import org.shelterwright.catalog.source.Figures;

/**
 * American wire gauge: {@code d = 0.127 mm · 92^((36 − n) / 39)}, with n = 0 for 1/0, −1 for 2/0, −2 for 3/0, −3 for 4/0.
 *
 * <p>Source: ASTM B258, clause 5 (formula and values seen).
 */
public final class Awg {
    private Awg() {}

    /**
     * Diameter of a solid wire (mm).
     *
     * @param gauge −3 to 56
     * @throws IllegalArgumentException if there is no such gauge
     */
    public static double diameterMm(int gauge) {
        Figures.within("gauge", gauge, -3, 56);
        return 0.127 * Math.pow(92, (36 - gauge) / 39.0);
    }

    /** Cross-section of a solid wire (mm²). */
    public static double areaMm2(int gauge) {
        double d = diameterMm(gauge);
        return Math.PI / 4 * d * d;
    }
}

package org.shelterwright.layouts.cable;

import org.shelterwright.catalog.cable.Conductors;

/**
 * Resistance of copper conductors: {@code R_θ = R_20 (230 + θ) / 250}, the inverse of the factor by which a measurement is
 * brought to 20 °C.
 *
 * <p>Source: IEC 60228, annex, simplified temperature factor 250/(230 + θ) (as quoted).
 */
public final class Resistance {
    private Resistance() {}

    /** Factor from 20 °C to another temperature of the conductor (°C). */
    public static double factor(double temperatureC) {
        return (230 + temperatureC) / 250;
    }

    /** Resistance of one conductor (Ω/m). */
    public static double ohmPerM(Conductors conductors, double temperatureC) {
        return conductors.ohmPerKm() / 1000 * factor(temperatureC);
    }
}

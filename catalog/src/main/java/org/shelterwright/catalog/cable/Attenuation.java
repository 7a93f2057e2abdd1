package org.shelterwright.catalog.cable;

import org.shelterwright.catalog.source.Figures;

/**
 * How a line weakens a signal: {@code a(f) = k1 + k2 f + k3 √f} over 100 m, with the frequency f in MHz. A law of the root
 * alone comes out too low at high frequencies.
 *
 * @param k1 (dB/100 m)
 * @param k2 (dB/100 m for each MHz)
 * @param k3 (dB/100 m for each root of a MHz)
 * @param lowMHz lowest frequency that the three were fitted for (MHz)
 * @param highMHz highest such frequency (MHz)
 */
public record Attenuation(double k1, double k2, double k3, double lowMHz, double highMHz) {
    private static final double MOST = 1_000;

    public Attenuation {
        Figures.within("attenuation k1", k1, -MOST, MOST);
        Figures.within("attenuation k2", k2, -MOST, MOST);
        Figures.within("attenuation k3", k3, -MOST, MOST);
        Figures.notNegative("lowest frequency (MHz)", lowMHz);
        Figures.positive("highest frequency (MHz)", highMHz);
        if (highMHz < lowMHz) {
            throw new IllegalArgumentException(
                    "The highest frequency of " + highMHz + " MHz must not be below the lowest of " + lowMHz + " MHz.");
        }
    }

    /** Whether a frequency lies where the figures hold. */
    public boolean covers(double frequencyMHz) {
        return frequencyMHz >= lowMHz && frequencyMHz <= highMHz;
    }

    /** Loss of 100 m (dB). */
    public double per100m(double frequencyMHz) {
        return k1 + k2 * frequencyMHz + k3 * Math.sqrt(frequencyMHz);
    }
}

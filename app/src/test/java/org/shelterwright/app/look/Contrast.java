package org.shelterwright.app.look;

import org.shelterwright.app.drawing.Colour;

/**
 * Contrast of two colours: (lighter + 0.05) / (darker + 0.05) of their relative luminance.
 *
 * <p>Source: WCAG 2.2, definitions of "contrast ratio" and "relative luminance". Text needs 4.5 (1.4.3), graphics 3 (1.4.11).
 */
public final class Contrast {
    private Contrast() {}

    public static double of(Colour a, Colour b) {
        double la = luminance(a);
        double lb = luminance(b);
        return (Math.max(la, lb) + 0.05) / (Math.min(la, lb) + 0.05);
    }

    private static double luminance(Colour colour) {
        return 0.2126 * channel(colour, 16) + 0.7152 * channel(colour, 8) + 0.0722 * channel(colour, 0);
    }

    private static double channel(Colour colour, int shift) {
        double value = (colour.rgb() >> shift & 0xFF) / 255.0;
        return value <= 0.04045 ? value / 12.92 : Math.pow((value + 0.055) / 1.055, 2.4);
    }
}

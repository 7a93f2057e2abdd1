package org.shelterwright.layouts.insight;

import java.util.Arrays;

/**
 * The chance that a sum of independent figures, each evenly spread over a range about nothing, is greater than a bound.
 *
 * <p>Source: for some of them the volume of a cube cut by a plane, {@code P(S ≤ s) = 1/(n! Π 2uᵢ) Σ_ε (Π εᵢ) max(0, s + Σ εᵢuᵢ)ⁿ} over all
 * signs ε (after Feller, An introduction to probability theory and its applications, volume 2, I.9, theorem 1; from memory); for many
 * the normal distribution with the variance {@code Σ uᵢ²/3} (central limit theorem).
 */
final class SumOfUniforms {
    /** More than this and the alternating terms lose too many figures. */
    static final int MOST_EXACT = 12;

    private SumOfUniforms() {}

    /**
     * The chance that the sum is above a bound.
     *
     * @param halfWidths each above zero
     */
    static double above(double bound, double[] halfWidths) {
        double reach = Arrays.stream(halfWidths).sum();
        if (bound >= reach) {
            return 0;
        }
        if (bound < -reach) {
            return 1;
        }
        if (halfWidths.length > MOST_EXACT) {
            double variance = Arrays.stream(halfWidths).map(u -> u * u / 3).sum();
            return normalAbove(bound / Math.sqrt(variance));
        }
        return bound < 0 ? 1 - exactAbove(-bound, halfWidths) : exactAbove(bound, halfWidths);
    }

    private static double exactAbove(double bound, double[] widths) {
        int n = widths.length;
        double sum = 0;
        for (int signs = 0; signs < 1 << n; signs++) {
            double at = -bound;
            for (int i = 0; i < n; i++) {
                at += (signs >> i & 1) == 0 ? widths[i] : -widths[i];
            }
            if (at > 0) {
                sum += (Integer.bitCount(signs) % 2 == 0 ? 1 : -1) * Math.pow(at, n);
            }
        }
        for (int i = 0; i < n; i++) {
            sum /= (i + 1) * 2 * widths[i];
        }
        return Math.min(1, Math.max(0, sum));
    }

    /**
     * Upper tail of the normal distribution.
     *
     * <p>Source: Abramowitz and Stegun, Handbook of mathematical functions, 26.2.17, error below 7.5e-8 (from memory; a test holds
     * it against tabled values).
     */
    static double normalAbove(double z) {
        if (z < 0) {
            return 1 - normalAbove(-z);
        }
        double t = 1 / (1 + 0.2316419 * z);
        double poly = t * (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
        return Math.exp(-z * z / 2) / Math.sqrt(2 * Math.PI) * poly;
    }
}

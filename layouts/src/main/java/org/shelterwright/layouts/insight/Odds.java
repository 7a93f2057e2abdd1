package org.shelterwright.layouts.insight;

import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.ledger.Subject;

/**
 * The chance that a limit is exceeded, since masses and centres are not known exactly.
 *
 * @param limit id of the limit
 * @param title what is limited
 * @param exceeded in how many draws it is broken
 * @param draws how many draws were made in which it could be assessed
 * @param closedForm the same chance without drawing, for sums of masses; {@code null} for others
 * @param exact whether the closed form is exact, and not that of the normal distribution
 */
public record Odds(
        Subject subject,
        String limit,
        String title,
        int exceeded,
        int draws,
        @Nullable Double closedForm,
        boolean exact) {
    private static final double Z95 = 1.959964;

    /** Share of the draws in which the limit is broken. */
    public double share() {
        return draws == 0 ? 0 : (double) exceeded / draws;
    }

    /** Lower end of the range that holds the chance with 95 % confidence. */
    public double low() {
        return Math.max(0, middle(Z95) - half(Z95));
    }

    /** Upper end of that range. */
    public double high() {
        return Math.min(1, middle(Z95) + half(Z95));
    }

    /** Middle of the score interval (Wilson, Journal of the American Statistical Association 22 (1927) 209-212; from memory). */
    private double middle(double z) {
        return (share() + z * z / (2 * draws)) / (1 + z * z / draws);
    }

    private double half(double z) {
        double p = share();
        return z * Math.sqrt(p * (1 - p) / draws + z * z / (4.0 * draws * draws)) / (1 + z * z / draws);
    }
}

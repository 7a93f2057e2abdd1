package org.shelterwright.app.cli.terminal;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;

/** Figures as people read them in a terminal: no grouping, a point, five significant digits. */
public final class Shown {
    private static final MathContext DIGITS = new MathContext(5, RoundingMode.HALF_UP);

    private Shown() {}

    /** Gives a figure without needless zeros, such as {@code 7423.5}; a dash if there is none. */
    public static String figure(@Nullable Double value) {
        if (value == null) {
            return "-";
        }
        BigDecimal rounded = BigDecimal.valueOf(value);
        if (rounded.precision() - rounded.scale() < DIGITS.getPrecision()) {
            rounded = rounded.round(DIGITS);
        } else {
            rounded = rounded.setScale(0, RoundingMode.HALF_UP);
        }
        return plain(rounded);
    }

    /**
     * Gives a use in percent with one decimal, such as {@code 97.3 %}. What is above one is rounded up and the rest
     * down, so that a limit that is overstepped by little never reads 100 %.
     */
    public static String use(@Nullable Double use) {
        if (use == null) {
            return "-";
        }
        BigDecimal percent = BigDecimal.valueOf(use).movePointRight(2);
        return percent.setScale(1, use > 1 ? RoundingMode.CEILING : RoundingMode.FLOOR)
                        .toPlainString() + " %";
    }

    private static String plain(BigDecimal value) {
        BigDecimal stripped = value.signum() == 0 ? BigDecimal.ZERO : value.stripTrailingZeros();
        return (stripped.scale() < 0 ? stripped.setScale(0, RoundingMode.UNNECESSARY) : stripped).toPlainString();
    }
}

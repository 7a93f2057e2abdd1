package org.shelterwright.app.look;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.shelterwright.catalog.space.Lengths;

/** How figures are written on paper: a thin gap between thousands, a true minus, a decimal point. */
public final class Numerals {

    /** Thin gap. */
    public static final char GAP = '\u2009';

    /** True minus. */
    public static final char MINUS = '\u2212';

    private Numerals() {}

    /** A figure with a fixed count of decimals, rounded half up. */
    public static String of(double value, int decimals) {
        return grouped(BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP));
    }

    /** A length in millimetres, exact. */
    public static String mm(int micrometres) {
        return grouped(Lengths.millimetres(micrometres));
    }

    /** A figure with as many decimals as three or more significant digits need: 14 120, 9.81, 0.643, 47. */
    public static String short3(double value) {
        double size = Math.abs(value);
        if (size >= 100 || value == Math.rint(value)) {
            return of(value, 0);
        }
        return of(value, size >= 10 ? 1 : size >= 1 ? 2 : 3);
    }

    private static String grouped(BigDecimal value) {
        String plain = value.abs().toPlainString();
        int point = plain.indexOf('.') < 0 ? plain.length() : plain.indexOf('.');
        StringBuilder text = new StringBuilder(plain);
        for (int i = point - 3; i > 0; i -= 3) {
            text.insert(i, GAP);
        }
        return value.signum() < 0 ? MINUS + text.toString() : text.toString();
    }
}

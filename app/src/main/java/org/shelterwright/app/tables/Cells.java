package org.shelterwright.app.tables;

import java.math.BigDecimal;
import java.math.MathContext;

/** How values go into the cells of a file. */
final class Cells {

    /** More than any measured figure has; less than what arithmetic leaves behind. */
    private static final MathContext DIGITS = new MathContext(12);

    private static final String FORMULA_BEGINNINGS = "=+-@\t\r\n";

    private Cells() {}

    /**
     * A text that no spreadsheet program runs as a formula: one that begins like a formula gets an apostrophe before it.
     * Numbers are written as numbers and need no guard.
     */
    static String text(String text) {
        return !text.isEmpty() && FORMULA_BEGINNINGS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }

    /** A number with at most twelve significant digits. */
    static BigDecimal number(Number number) {
        BigDecimal rounded = new BigDecimal(number.toString()).round(DIGITS).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }
}

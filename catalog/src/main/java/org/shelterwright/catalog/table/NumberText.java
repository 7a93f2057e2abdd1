package org.shelterwright.catalog.table;

import java.math.BigDecimal;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A number as people write it, with an optional unit behind it. What can be read in two ways is not read.
 *
 * <p>A lone comma before exactly three digits may group thousands or start decimals: {@code "1,234"} is doubtful. So is a
 * lone point in that place in a table that uses decimal commas elsewhere. {@code "12,5"}, {@code "0,125"},
 * {@code "1.234,5"} and {@code "1,234.5"} can be read in one way only.
 *
 * @param value {@code null} if it was not read
 * @param unit what follows the number; {@code null} if nothing does
 * @param trouble why it was not read; {@code null} if it was
 * @param doubtful true if it has two readings, false if it has none
 * @param remark how it was read where that is not plain; otherwise {@code null}
 */
record NumberText(
        @Nullable BigDecimal value,
        @Nullable String unit,
        @Nullable String trouble,
        boolean doubtful,
        @Nullable String remark) {
    private static final Pattern SHAPE =
            Pattern.compile("([-+\u2212]?)\\s*(\\d[\\d., ]{0,40}|[.,]\\d{1,40})\\s*([\\p{L}\"\u2033]{1,20}\\.?)?");
    private static final Pattern GROUPED_COMMAS = Pattern.compile("\\d{1,3}(,\\d{3})+");
    private static final Pattern GROUPED_POINTS = Pattern.compile("\\d{1,3}(\\.\\d{3})+");
    private static final Pattern GROUPED_BLANKS = Pattern.compile("\\d{1,3}( \\d{3})+([.,]\\d+)?");
    private static final Pattern COMMA_THREE = Pattern.compile("[1-9]\\d{0,2},\\d{3}");
    private static final Pattern POINT_THREE = Pattern.compile("[1-9]\\d{0,2}\\.\\d{3}");
    private static final Pattern PLAIN = Pattern.compile("\\d*\\.?\\d*");

    /** @param decimalCommas whether the table uses decimal commas elsewhere */
    static NumberText parse(String text, boolean decimalCommas) {
        Matcher shape = SHAPE.matcher(text.strip());
        if (!shape.matches()) {
            return none("is no number");
        }
        String digits = shape.group(2).strip();
        String blanks = null;
        if (digits.indexOf(' ') >= 0) {
            if (!GROUPED_BLANKS.matcher(digits).matches()) {
                return none("is no number");
            }
            digits = digits.replace(" ", "");
            blanks = "the blank groups thousands";
        }
        if (COMMA_THREE.matcher(digits).matches() && blanks == null) {
            return twoWays("may mean " + digits.replace(",", "") + " or " + digits.replace(',', '.'));
        }
        if (POINT_THREE.matcher(digits).matches() && decimalCommas && blanks == null) {
            return twoWays("may mean " + digits.replace(".", "") + " or " + digits
                    + ", since other numbers have decimal commas");
        }
        String plain = plain(digits);
        if (plain == null || !PLAIN.matcher(plain).matches()) {
            return none("is no number");
        }
        BigDecimal value =
                new BigDecimal(shape.group(1).isEmpty() || shape.group(1).equals("+") ? plain : "-" + plain);
        String remark = plain.equals(digits) && blanks == null ? null : "was read as " + value.toPlainString();
        return new NumberText(value, shape.group(3), null, false, remark);
    }

    /** Whether a text holds a decimal comma beyond doubt. */
    static boolean hasDecimalComma(String text) {
        Matcher shape = SHAPE.matcher(text.strip());
        if (!shape.matches()) {
            return false;
        }
        String digits = shape.group(2).strip();
        int comma = digits.lastIndexOf(',');
        return comma >= 0
                && comma > digits.lastIndexOf('.')
                && digits.indexOf(',') == comma
                && !COMMA_THREE.matcher(digits).matches();
    }

    /** The digits with a decimal point at most; {@code null} if the separators make no sense. */
    private static @Nullable String plain(String digits) {
        int comma = digits.lastIndexOf(',');
        int point = digits.lastIndexOf('.');
        if (comma >= 0 && point >= 0) {
            char decimal = comma > point ? ',' : '.';
            String whole = digits.substring(0, Math.max(comma, point));
            boolean grouped = (decimal == ',' ? GROUPED_POINTS : GROUPED_COMMAS)
                    .matcher(whole)
                    .matches();
            return grouped ? whole.replaceAll("[.,]", "") + "." + digits.substring(Math.max(comma, point) + 1) : null;
        }
        if (comma >= 0) {
            return digits.indexOf(',') == comma
                    ? digits.replace(',', '.')
                    : GROUPED_COMMAS.matcher(digits).matches() ? digits.replace(",", "") : null;
        }
        if (point >= 0 && digits.indexOf('.') != point) {
            return GROUPED_POINTS.matcher(digits).matches() ? digits.replace(".", "") : null;
        }
        return digits;
    }

    private static NumberText none(String trouble) {
        return new NumberText(null, null, trouble, false, null);
    }

    private static NumberText twoWays(String trouble) {
        return new NumberText(null, null, trouble, true, null);
    }
}

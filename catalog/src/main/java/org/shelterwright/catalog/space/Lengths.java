package org.shelterwright.catalog.space;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads and writes lengths: micrometres inside, millimetres or inches at the edges, without rounding. */
public final class Lengths {
    /** Micrometres in a millimetre. */
    public static final int MM = 1_000;

    /** Micrometres in a metre. */
    public static final int M = 1_000_000;

    /** Micrometres in an inch; exact by definition (25.4 mm). */
    public static final int INCH = 25_400;

    private static final Pattern TEXT =
            Pattern.compile("\\s*([-+\u2212]?\\d{1,9}(?:[.,]\\d{1,9})?)\\s*(mm|cm|m|in|\"|ft)?\\s*");

    private Lengths() {}

    /**
     * Takes a length in millimetres.
     *
     * @param mm millimetres, at most three decimals
     * @return micrometres
     * @throws IllegalArgumentException if it has a part finer than a micrometre or lies out of range
     */
    public static int ofMillimetres(BigDecimal mm) {
        return micrometres(mm, MM, mm.toPlainString() + " mm");
    }

    /**
     * Takes a length with its unit, such as {@code "1.2 m"}, {@code "19 in"} or {@code "450"}; without a unit it is in
     * millimetres.
     *
     * @return micrometres
     * @throws IllegalArgumentException if the text is no length, is finer than a micrometre or lies out of range
     */
    public static int parse(String text) {
        Matcher matcher = TEXT.matcher(text);
        if (!matcher.matches()) {
            throw new IllegalArgumentException("\"" + shortened(text)
                    + "\" is no length. Write millimetres, or a number with mm, cm, m, in or ft.");
        }
        BigDecimal number = new BigDecimal(matcher.group(1).replace(',', '.').replace('\u2212', '-'));
        String unit = matcher.group(2) == null ? "mm" : matcher.group(2);
        int factor = switch (unit) {
            case "cm" -> 10 * MM;
            case "m" -> M;
            case "in", "\"" -> INCH;
            case "ft" -> 12 * INCH;
            default -> MM;
        };
        return micrometres(number, factor, text.strip());
    }

    /** Gives a length in millimetres without a unit and without needless zeros, such as {@code 44.45}. */
    public static String format(int micrometres) {
        return millimetres(micrometres).toPlainString();
    }

    /** Gives a length in millimetres, exact, without trailing zeros after the point. */
    public static BigDecimal millimetres(int micrometres) {
        BigDecimal mm = BigDecimal.valueOf(micrometres, 3).stripTrailingZeros();
        return mm.scale() < 0 ? mm.setScale(0, RoundingMode.UNNECESSARY) : mm;
    }

    /** Gives a length in metres. */
    public static double metres(int micrometres) {
        return micrometres * 1e-6;
    }

    /** Gives a length in millimetres with the given count of decimals, rounded half up. */
    public static String rounded(int micrometres, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", micrometres / 1000.0);
    }

    private static int micrometres(BigDecimal number, int factor, String shown) {
        BigDecimal exact = number.multiply(BigDecimal.valueOf(factor)).stripTrailingZeros();
        if (exact.scale() > 0) {
            throw new IllegalArgumentException("The length " + shown
                    + " is finer than a micrometre. Give at most three decimals of a millimetre.");
        }
        if (exact.abs().compareTo(BigDecimal.valueOf(Range.LIMIT)) > 0) {
            throw new IllegalArgumentException("The length " + shown + " is beyond 500 m. Maybe the unit is wrong.");
        }
        return exact.intValueExact();
    }

    private static String shortened(String text) {
        return text.length() <= 40 ? text : text.substring(0, 40) + "…";
    }
}

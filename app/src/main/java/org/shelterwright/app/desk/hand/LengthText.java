package org.shelterwright.app.desk.hand;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Lengths;

/**
 * Reads lengths as people type them: "25.4", "1,2 m", "3 in", "3 1/2 in", sums and differences such as "450+25", and in
 * them units that differ. Nothing is rounded: what is no whole number of micrometres is refused. But
 * what {@link LengthUnit#format} wrote leads back to the same length.
 */
public final class LengthText {
    private static final int LONGEST = 60;
    private static final int FARTHEST_M = 500;
    private static final Pattern TERM =
            Pattern.compile("\\s*(?:(?:(?<whole>\\d{1,6})\\s+)?(?<over>\\d{1,6})\\s*/\\s*(?<under>\\d{1,6})"
                    + "|(?<number>\\d{1,9}(?:[.,]\\d{0,9})?|[.,]\\d{1,9}))"
                    + "\\s*(?<unit>mm|cm|m|inches|inch|in|\"|\u2033|ft|')?\\s*");

    private LengthText() {}

    /**
     * Reads a length.
     *
     * @param unit unit of numbers that have none
     * @return micrometres
     * @throws IllegalArgumentException with a sentence that says what is wrong and what would be right
     */
    public static int parse(String text, LengthUnit unit) {
        String rest = text.strip().toLowerCase(Locale.ROOT).replace('\u2212', '-');
        if (rest.isEmpty()) {
            throw new IllegalArgumentException("A length is missing. Type a number, such as 450 or 1.2 m.");
        }
        if (rest.length() > LONGEST) {
            throw new IllegalArgumentException("This is too long for a length. Type a number, such as 450 or 1.2 m.");
        }
        BigDecimal sum = BigDecimal.ZERO;
        boolean signed = rest.charAt(0) == '+' || rest.charAt(0) == '-';
        for (String part : (signed ? rest : "+" + rest).split("(?=[+-])")) {
            BigDecimal term = term(part.substring(1), text, unit);
            sum = part.charAt(0) == '-' ? sum.subtract(term) : sum.add(term);
        }
        return whole(sum, text, unit);
    }

    /** Micrometres of one term. */
    private static BigDecimal term(String part, String text, LengthUnit unit) {
        Matcher matcher = TERM.matcher(part);
        if (!matcher.matches()) {
            throw new IllegalArgumentException("\"" + text.strip()
                    + "\" is no length. Type a number or a sum, such as 25.4, 1.2 m, 3 in or 450+25.");
        }
        BigDecimal factor = factor(matcher.group("unit"), unit);
        String whole = matcher.group("whole");
        BigDecimal number = matcher.group("over") == null
                ? new BigDecimal("0" + matcher.group("number").replace(',', '.')).multiply(factor)
                : fraction(matcher, factor, part);
        return whole == null ? number : number.add(new BigDecimal(whole).multiply(factor));
    }

    private static BigDecimal fraction(Matcher matcher, BigDecimal factor, String part) {
        BigDecimal under = new BigDecimal(matcher.group("under"));
        if (under.signum() == 0) {
            throw new IllegalArgumentException("The fraction \"" + part.strip() + "\" is divided by zero.");
        }
        BigInteger[] parts = new BigDecimal(matcher.group("over"))
                .multiply(factor)
                .toBigIntegerExact()
                .divideAndRemainder(under.toBigIntegerExact());
        if (parts[1].signum() != 0) {
            throw new IllegalArgumentException("The fraction \"" + part.strip()
                    + "\" is no whole number of micrometres. Type it with a point instead, rounded as you want it.");
        }
        return new BigDecimal(parts[0]);
    }

    private static BigDecimal factor(@Nullable String sign, LengthUnit unit) {
        int micrometres = switch (sign == null ? unit.sign() : sign) {
            case "cm" -> 10 * Lengths.MM;
            case "m" -> Lengths.M;
            case "in", "inch", "inches", "\"", "\u2033" -> Lengths.INCH;
            case "ft", "'" -> 12 * Lengths.INCH;
            default -> Lengths.MM;
        };
        return BigDecimal.valueOf(micrometres);
    }

    private static int whole(BigDecimal sum, String text, LengthUnit unit) {
        BigDecimal exact = sum.stripTrailingZeros();
        if (exact.abs().compareTo(BigDecimal.valueOf((long) FARTHEST_M * Lengths.M)) > 0) {
            throw new IllegalArgumentException(
                    "\"" + text.strip() + "\" is beyond " + FARTHEST_M + " m. Maybe the unit is wrong.");
        }
        if (exact.scale() > 0) {
            int near = exact.setScale(0, RoundingMode.HALF_UP).intValueExact();
            if (writes(text, near, unit)) {
                return near;
            }
            throw new IllegalArgumentException("\"" + text.strip()
                    + "\" is finer than a micrometre. The nearest length is " + Lengths.format(near) + " mm.");
        }
        return exact.intValueExact();
    }

    /** Whether a text is just how the unit writes a length that it cannot write exactly. */
    private static boolean writes(String text, int length, LengthUnit unit) {
        return unit.format(length).equals(text.strip().replace('-', '\u2212').replace(',', '.'));
    }
}

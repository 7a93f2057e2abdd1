package org.shelterwright.app.desk.item;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.hand.LengthText;
import org.shelterwright.app.desk.hand.LengthUnit;
import org.shelterwright.catalog.source.Figures;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;

/** Reads figures as people type them. What is wrong is said in one sentence. */
final class Typed {
    private static final Pattern NUMBER = Pattern.compile("([-\u2212]?\\d{1,12}(?:[.,]\\d{0,9})?|[.,]\\d{1,9})");

    /** A length; it must be above zero. */
    int extent(String text) {
        int length = LengthText.parse(text, LengthUnit.MILLIMETRE);
        if (length <= 0) {
            throw new IllegalArgumentException("The size of " + Lengths.format(length) + " mm must be above zero.");
        }
        return length;
    }

    /** A length; {@code null} if nothing is typed. */
    @Nullable
    Integer lengthOrNothing(String text) {
        return text.isBlank() ? null : LengthText.parse(text, LengthUnit.MILLIMETRE);
    }

    /** A place; {@code null} if nothing is typed. */
    @Nullable
    Point pointOrNothing(String text) {
        return text.isBlank() ? null : point(text);
    }

    /** Three lengths, with spaces or semicolons between them. */
    Point point(String text) {
        String[] parts = text.strip().split(text.contains(";") ? "\\s*;\\s*" : "\\s+");
        if (parts.length != 3) {
            throw new IllegalArgumentException("\"" + text.strip()
                    + "\" is no place. Type three lengths along x, y and z, such as 600 0 0, or 1.2 m; 3 in; 0.");
        }
        return new Point(
                LengthText.parse(parts[0], LengthUnit.MILLIMETRE),
                LengthText.parse(parts[1], LengthUnit.MILLIMETRE),
                LengthText.parse(parts[2], LengthUnit.MILLIMETRE));
    }

    /** A mass (kg); {@code null} if nothing is typed. */
    @Nullable
    Double mass(String text) {
        return number(text, "kg", "mass. Type kilograms, such as 48.5, or nothing if it is not known.");
    }

    /** A mass that something bears (kg); {@code null} if nothing is typed. */
    @Nullable
    Double load(String text) {
        Double kg = mass(text);
        return kg == null ? null : Figures.notNegative("mass stacked on it (kg)", kg);
    }

    /** A share from a percentage; {@code null} if nothing is typed. */
    @Nullable
    Double share(String text) {
        Double percent = number(text, "%", "share. Type a percentage, such as 5, or nothing for the usual one.");
        return percent == null
                ? null
                : BigDecimal.valueOf(percent).movePointLeft(2).doubleValue();
    }

    private static @Nullable Double number(String text, String unit, String wanted) {
        String rest = text.strip().toLowerCase(Locale.ROOT);
        if (rest.isEmpty()) {
            return null;
        }
        if (rest.endsWith(unit)) {
            rest = rest.substring(0, rest.length() - unit.length()).strip();
        }
        Matcher matcher = NUMBER.matcher(rest);
        if (!matcher.matches()) {
            throw new IllegalArgumentException("\"" + text.strip() + "\" is no " + wanted);
        }
        return Double.valueOf(rest.replace(',', '.').replace('\u2212', '-'));
    }
}

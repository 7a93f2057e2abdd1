package org.shelterwright.catalog.table;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A header taken apart: {@code "Mass [kg]"}, {@code "mass (kg)"}, {@code "mass, kg"}, {@code "mass_kg"} and {@code "Mass
 * kg"} all give "mass" and kg.
 *
 * @param name in lower case, with single blanks
 * @param unit {@code null} if it names none
 * @param unitText what stands where a unit is expected but is none; otherwise {@code null}
 */
record Header(String name, @Nullable Unit unit, @Nullable String unitText) {
    private static final Pattern BRACKETED = Pattern.compile("(.*?)[\\[(]([^\\])]*)[\\])]\\s*");
    private static final Pattern TRAILING = Pattern.compile("(.+?)[\\s,/:]+(?:in\\s+)?(\\S+)");

    static Header of(String text) {
        String plain = text.toLowerCase(Locale.ROOT).replace('_', ' ').strip();
        Matcher bracketed = BRACKETED.matcher(plain);
        if (bracketed.matches()) {
            String inside = bracketed.group(2).strip();
            Unit unit = Unit.of(inside).orElse(null);
            return new Header(tidy(bracketed.group(1)), unit, unit == null ? inside : null);
        }
        Matcher trailing = TRAILING.matcher(plain);
        if (trailing.matches()) {
            Unit unit = Unit.of(trailing.group(2)).orElse(null);
            if (unit != null && Role.of(tidy(trailing.group(1))).isPresent()) {
                return new Header(tidy(trailing.group(1)), unit, null);
            }
        }
        return new Header(tidy(plain), null, null);
    }

    private static String tidy(String name) {
        return name.replaceAll("[\\s.:,/#]+", " ").strip();
    }
}

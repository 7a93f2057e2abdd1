package org.shelterwright.catalog.json;

import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Pattern;

/** What texts in files may hold, and how messages show them. */
final class Texts {
    /** Longest text in a file (characters). */
    static final int LONGEST = 10_000;

    /** Ids name files and stand in references such as {@code rack-1/power}, so they hold no separators. */
    static final Pattern ID = Pattern.compile("[A-Za-z0-9][A-Za-z0-9._-]{0,79}");

    private static final int SHOWN = 60;

    private Texts() {}

    /** A text in quotes on one line, cut to a length that fits a message. */
    static String quoted(String text) {
        StringBuilder line = new StringBuilder("\"");
        text.codePoints()
                .limit(SHOWN)
                .map(c -> Character.isISOControl(c) || Character.getType(c) == Character.SURROGATE ? ' ' : c)
                .forEach(line::appendCodePoint);
        return line.append(text.codePointCount(0, text.length()) > SHOWN ? "…\"" : "\"")
                .toString();
    }

    /** What is wrong with the characters of a text, as the end of a sentence that names it. */
    static Optional<String> fault(String text) {
        OptionalInt bad = text.codePoints()
                .filter(c -> Character.isISOControl(c) && c != '\n' && c != '\t'
                        || Character.getType(c) == Character.SURROGATE)
                .findFirst();
        return bad.isPresent()
                ? Optional.of(
                        "holds the character U+%04X, which no text may hold. Remove it.".formatted(bad.getAsInt()))
                : Optional.empty();
    }
}

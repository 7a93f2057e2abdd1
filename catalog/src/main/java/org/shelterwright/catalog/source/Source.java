package org.shelterwright.catalog.source;

import org.jspecify.annotations.Nullable;

/**
 * Where a rule or a figure comes from.
 *
 * @param document standard, regulation, book or record, with its edition
 * @param clause clause, table or page; {@code null} if the document has none
 * @param trust how the figure is known
 */
public record Source(String document, @Nullable String clause, Trust trust) {
    public Source {
        if (document.isBlank()) {
            throw new IllegalArgumentException("A source must name its document.");
        }
    }

    /** How a figure is known. */
    public enum Trust {
        /** Read in the document or in a faithful copy of it. */
        SEEN,
        /** Read in another text that quotes the document. */
        QUOTED,
        /** Not read: known from memory, to be checked against the document. */
        FROM_MEMORY,
        /** A rule of the trade without a document of its own. */
        COMMON_PRACTICE,
        /** Set by whoever wrote the brief or the data. */
        STATED
    }

    public static Source seen(String document, String clause) {
        return new Source(document, clause, Trust.SEEN);
    }

    public static Source quoted(String document, String clause) {
        return new Source(document, clause, Trust.QUOTED);
    }

    public static Source fromMemory(String document, String clause) {
        return new Source(document, clause, Trust.FROM_MEMORY);
    }

    public static Source commonPractice(String rule) {
        return new Source(rule, null, Trust.COMMON_PRACTICE);
    }

    public static Source stated(String document, @Nullable String clause) {
        return new Source(document, clause, Trust.STATED);
    }

    /** One line for ledgers and documents, such as {@code "23 CFR 658.17, (e)"} or {@code "… (from memory)"}. */
    public String text() {
        String base = clause == null ? document : document + ", " + clause;
        return switch (trust) {
            case SEEN, STATED -> base;
            case QUOTED -> base + " (as quoted)";
            case FROM_MEMORY -> base + " (from memory)";
            case COMMON_PRACTICE -> base + " (common practice)";
        };
    }
}

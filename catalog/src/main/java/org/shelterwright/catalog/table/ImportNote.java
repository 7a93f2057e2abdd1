package org.shelterwright.catalog.table;

/**
 * Something that a person should know about an import.
 *
 * @param address cell, such as "C7"; the first cell of a row that it concerns as a whole
 * @param sentence what was found, and what became of it
 */
public record ImportNote(String address, Kind kind, String sentence) {
    /** What became of a cell or row. */
    public enum Kind {
        /** A row gave no item. */
        ROW_LEFT_OUT,
        /** The value of a cell was not used. */
        DROPPED,
        /** The value could be read in two ways, and was not used; or it was used but is unusual. */
        DOUBTFUL,
        /** Something that the table does not say was filled in. */
        ASSUMED,
        /** The value was used, in a way that should be known: a formula's result, a decimal comma, a rounding. */
        READ_AS
    }

    /** One line for people. */
    public String text() {
        return address + ": " + sentence;
    }
}

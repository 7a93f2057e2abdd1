package org.shelterwright.catalog.table;

import java.util.regex.Pattern;

/**
 * One cell that is not empty.
 *
 * @param column from zero
 * @param row from zero
 * @param text what it shows: of a formula, its last result as stored in the file
 * @param kind what it holds
 */
record Cell(int column, int row, String text, Kind kind) {
    /** What a cell holds. */
    enum Kind {
        TEXT,
        NUMBER,
        /** A number that a formula gave. */
        FORMULA,
        /** A failed formula or broken content. */
        FAULT
    }

    private static final Pattern BLANKS = Pattern.compile("[\\s\\u00A0\\u2007\\u202F]+");

    Cell {
        text = BLANKS.matcher(text).replaceAll(" ").strip();
    }

    String address() {
        return address(column, row);
    }

    /** Address as spreadsheets write it: column 2, row 6 is {@code C7}. */
    static String address(int column, int row) {
        return letters(column) + (row + 1);
    }

    static String letters(int column) {
        StringBuilder letters = new StringBuilder();
        for (int rest = column; rest >= 0; rest = rest / 26 - 1) {
            letters.insert(0, (char) ('A' + rest % 26));
        }
        return letters.toString();
    }
}

package org.shelterwright.catalog.table;

import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.json.InputException;

/**
 * The cells of one sheet.
 *
 * @param file name of the file, as messages call it
 * @param rows the rows that are not empty, from top to bottom
 * @param notes what the reader of the file has to tell
 */
record Table(String file, List<Line> rows, List<ImportNote> notes) {
    static final int MOST_ROWS = 20_000;
    static final int MOST_COLUMNS = 200;
    static final int LONGEST_TEXT = 10_000;

    Table {
        rows = List.copyOf(rows);
        notes = List.copyOf(notes);
    }

    /** One row: its number, from zero, and its cells that are not empty. */
    record Line(int row, List<Cell> cells) {
        Line {
            cells = List.copyOf(cells);
        }

        Optional<Cell> cell(int column) {
            return cells.stream().filter(cell -> cell.column() == column).findFirst();
        }
    }

    /**
     * Refuses a row beyond the bounds of what is read.
     *
     * @throws InputException naming the cell
     */
    static void requireWithinBounds(String file, int rowsSoFar, Line line) {
        if (rowsSoFar >= MOST_ROWS) {
            throw new InputException(
                    file + ", row " + (line.row() + 1),
                    "The table has more than " + MOST_ROWS + " filled rows. Split it into several files.");
        }
        for (Cell cell : line.cells()) {
            if (cell.column() >= MOST_COLUMNS) {
                throw new InputException(
                        file + ", cell " + cell.address(),
                        "The table has more than " + MOST_COLUMNS
                                + " columns. Leave only those of the equipment list.");
            }
            if (cell.text().length() > LONGEST_TEXT) {
                throw new InputException(
                        file + ", cell " + cell.address(),
                        "The text has more than " + LONGEST_TEXT + " characters. Shorten it.");
            }
        }
    }
}

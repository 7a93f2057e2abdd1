package org.shelterwright.app.tables;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A table: a name, the heads of its columns, and its rows. A cell is a text, a number, or {@code null} if there is
 * nothing to say.
 *
 * @param name name of the sheet in a workbook, at most 31 characters
 */
public record Table(String name, List<String> columns, List<List<@Nullable Object>> rows) {

    public Table {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
        for (List<@Nullable Object> row : rows) {
            if (row.size() != columns.size()) {
                throw new IllegalArgumentException("A row of the table \"" + name + "\" has " + row.size()
                        + " cells for " + columns.size() + " columns.");
            }
            for (Object cell : row) {
                if (cell instanceof Double number && !Double.isFinite(number)) {
                    throw new IllegalArgumentException("A cell of the table \"" + name + "\" is no finite number.");
                }
                if (cell != null && !(cell instanceof String) && !(cell instanceof Number)) {
                    throw new IllegalArgumentException("A cell is a text or a number, not a " + cell.getClass());
                }
            }
        }
    }
}

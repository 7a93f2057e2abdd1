package org.shelterwright.catalog.table;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * How the columns of a table were understood.
 *
 * @param headerRow number of the row with the headers, as spreadsheets count: from one
 * @param columns every column that has a header, from left to right
 */
public record ColumnMapping(int headerRow, List<Column> columns) {
    public ColumnMapping {
        columns = List.copyOf(columns);
    }

    /**
     * One column.
     *
     * @param letter such as "C"
     * @param header its text
     * @param role what it is taken for; {@code null} if it is not used
     * @param unit unit of its numbers where a cell states none; {@code null} if it holds no measures
     * @param ignoredBecause why it is not used; {@code null} if it is
     */
    public record Column(
            int index,
            String letter,
            String header,
            @Nullable Role role,
            @Nullable Unit unit,
            @Nullable String ignoredBecause) {
        /** One line for people, such as {@code C "Mass [lb]" is the mass in lb}. */
        public String text() {
            String start = letter + " \"" + header + "\" ";
            if (role == null) {
                return start + "is not used: " + ignoredBecause + ".";
            }
            return start + "is the " + role.meaning() + (unit == null ? "" : " in " + unit.symbol()) + ".";
        }
    }

    public Optional<Column> column(Role role) {
        return columns.stream().filter(column -> column.role() == role).findFirst();
    }

    /** The columns that are not used. */
    public List<Column> ignored() {
        return columns.stream().filter(column -> column.role() == null).toList();
    }
}

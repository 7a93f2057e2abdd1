package org.shelterwright.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;

/**
 * Rows that are shown as one: neighbours that are not assessed, say the same of different units, and so have no figures of
 * their own.
 */
public record RowGroup(List<Row> rows) {

    public RowGroup {
        rows = List.copyOf(rows);
    }

    /** The row that stands for all. */
    public Row row() {
        return rows.get(0);
    }

    /** The ids of all units concerned, each once. */
    public List<String> units() {
        return rows.stream().flatMap(row -> row.units().stream()).distinct().toList();
    }

    /** Puts rows together, in their order. */
    public static List<RowGroup> of(List<Row> rows) {
        List<RowGroup> groups = new ArrayList<>();
        List<Row> open = new ArrayList<>();
        for (Row row : rows) {
            if (!open.isEmpty() && !together(open.get(0), row)) {
                groups.add(new RowGroup(open));
                open.clear();
            }
            open.add(row);
        }
        if (!open.isEmpty()) {
            groups.add(new RowGroup(open));
        }
        return groups;
    }

    private static boolean together(Row a, Row b) {
        return a.verdict() == Verdict.NOT_ASSESSED
                && b.verdict() == Verdict.NOT_ASSESSED
                && a.limit().equals(b.limit())
                && a.title().equals(b.title())
                && a.state().equals(b.state())
                && Objects.equals(a.source(), b.source());
    }
}

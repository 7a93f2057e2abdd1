package org.shelterwright.app.report;

import java.util.IdentityHashMap;
import java.util.Map;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;

/** The numbers of the rows that are not met, "F1" and on in the order of the ledger: the same on screens and on paper. */
public final class RowMarks {
    private final Map<Row, String> marks = new IdentityHashMap<>();

    public RowMarks(Ledger ledger) {
        for (Row row : ledger.rows()) {
            if (row.verdict() != Verdict.MET) {
                marks.put(row, "F" + (marks.size() + 1));
            }
        }
    }

    /** The number of a row of this very ledger; empty if it is met. */
    public String of(Row row) {
        return marks.getOrDefault(row, "");
    }

    /** The numbers of rows shown as one, such as "F3 to F7". */
    public String of(RowGroup group) {
        String first = of(group.row());
        int more = group.rows().size() - 1;
        return more == 0 ? first : first + " to " + of(group.rows().get(more));
    }
}

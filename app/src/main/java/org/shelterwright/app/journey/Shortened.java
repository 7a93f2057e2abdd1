package org.shelterwright.app.journey;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;

/** The rows that are printed: all that are not met, and the tightest of each limit that is and applies. */
final class Shortened {
    private Shortened() {}

    static List<Row> of(List<Row> rows) {
        Set<String> shown = new HashSet<>();
        return rows.stream()
                .filter(row -> row.verdict() != Verdict.MET || !row.doesNotApply() && shown.add(row.limit()))
                .toList();
    }
}

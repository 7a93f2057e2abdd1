package org.shelterwright.layouts.ledger;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Every limit of a layout, answered: broken first, then close, not assessed and met; the tightest first in each. */
public record Ledger(List<Row> rows) {
    private static final Comparator<Row> ORDER = Comparator.comparing(Row::verdict)
            .thenComparing(row -> row.use() == null ? 0 : row.use(), Comparator.reverseOrder())
            .thenComparing(Row::limit)
            .thenComparing(row -> String.join(" ", row.units()))
            .thenComparing(Row::title)
            .thenComparing(Row::state)
            .thenComparing(Row::finding);

    public Ledger {
        rows = rows.stream().sorted(ORDER).toList();
    }

    /** The worst verdict of all rows; met if there are none. */
    public Verdict worst() {
        return rows.isEmpty() ? Verdict.MET : rows.get(0).verdict();
    }

    /** Whether every limit is met or close. */
    public boolean allMet() {
        Verdict worst = worst();
        return count(Verdict.NOT_ASSESSED) == 0 && worst != Verdict.BROKEN;
    }

    public long count(Verdict verdict) {
        return rows.stream().filter(row -> row.verdict() == verdict).count();
    }

    public Map<Subject, Verdict> bySubject() {
        Map<Subject, Verdict> worst = new EnumMap<>(Subject.class);
        for (Row row : rows) {
            worst.merge(row.subject(), row.verdict(), (a, b) -> a.compareTo(b) <= 0 ? a : b);
        }
        return worst;
    }

    public List<Row> of(String limit) {
        return rows.stream().filter(row -> row.limit().equals(limit)).toList();
    }
}

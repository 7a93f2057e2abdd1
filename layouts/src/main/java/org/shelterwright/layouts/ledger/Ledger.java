package org.shelterwright.layouts.ledger;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Every limit of a layout, answered: broken first, then close, not assessed and met; the tightest first in each. */
public record Ledger(List<Row> rows) {
    public Ledger {
        Row[] sorted = rows.toArray(new Row[0]);
        Arrays.sort(sorted, Ledger::compare);
        rows = List.of(sorted);
    }

    /** Live ledgers sort at every move: plain comparisons, the telling ones first. */
    private static int compare(Row a, Row b) {
        int order = a.verdict().compareTo(b.verdict());
        order = order != 0 ? order : Double.compare(use(b), use(a));
        order = order != 0 ? order : a.limit().compareTo(b.limit());
        order = order != 0 ? order : compare(a.units(), b.units());
        order = order != 0 ? order : a.title().compareTo(b.title());
        order = order != 0 ? order : a.state().compareTo(b.state());
        return order != 0 ? order : a.finding().compareTo(b.finding());
    }

    private static int compare(List<String> a, List<String> b) {
        int shared = Math.min(a.size(), b.size());
        for (int i = 0; i < shared; i++) {
            int order = a.get(i).compareTo(b.get(i));
            if (order != 0) {
                return order;
            }
        }
        return Integer.compare(a.size(), b.size());
    }

    private static double use(Row row) {
        Double use = row.use();
        return use == null ? 0 : use;
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

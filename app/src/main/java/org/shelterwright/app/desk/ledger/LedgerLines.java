package org.shelterwright.app.desk.ledger;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.shelterwright.app.desk.session.Finding;
import org.shelterwright.app.report.RowGroup;
import org.shelterwright.app.report.RowMarks;
import org.shelterwright.app.report.RowText;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.Verdict;

/** Makes the lines of the column: tightest first, numbered as in the documents, with what moved since the last save. */
final class LedgerLines {
    private final Map<Finding, Row> saved = new HashMap<>();
    private final Set<String> awaited = new HashSet<>();

    /** @param saved the ledger of the layout as it was last saved */
    LedgerLines(Ledger saved) {
        saved.rows().forEach(row -> {
            this.saved.putIfAbsent(Finding.of(row), row);
            if (row.awaited()) {
                awaited.add(row.limit());
            }
        });
    }

    /** @param accepted whether somebody has accepted a row with a reason */
    List<Line> lines(Ledger ledger, Predicate<Row> accepted, Shown shown) {
        RowMarks marks = new RowMarks(ledger);
        List<Row> rows = new ArrayList<>();
        Set<String> metLimits = new HashSet<>();
        int left = 0;
        for (Row row : ledger.rows()) {
            boolean asked = shown.only().isEmpty() || shown.only().get() == row.verdict();
            boolean tight = row.verdict() != Verdict.MET
                    || shown.allMet()
                    || (!row.doesNotApply() && metLimits.add(row.limit()));
            if (asked && tight) {
                rows.add(row);
            } else if (asked) {
                left++;
            }
        }
        List<Line> lines = new ArrayList<>();
        if (shown.bySubject()) {
            for (Subject subject : Subject.values()) {
                List<Row> of =
                        rows.stream().filter(row -> row.subject() == subject).toList();
                if (!of.isEmpty()) {
                    lines.add(new Line.Heading(subject, counts(ledger, subject)));
                    addEntries(lines, of, marks, accepted);
                }
            }
        } else {
            addEntries(lines, rows, marks, accepted);
        }
        if (left > 0) {
            lines.add(new Line.More(left));
        }
        return lines;
    }

    private void addEntries(List<Line> lines, List<Row> rows, RowMarks marks, Predicate<Row> accepted) {
        for (RowGroup group : RowGroup.of(rows)) {
            boolean all = group.rows().stream().allMatch(accepted);
            lines.add(new Line.Entry(group, marks.of(group), before(group.row()), all));
        }
    }

    private String before(Row row) {
        Row then = saved.get(Finding.of(row));
        if (row.awaited() || awaited.contains(row.limit())) {
            return "";
        }
        if (then == null) {
            return row.verdict() == Verdict.MET ? "" : "new";
        }
        if (then.verdict() != row.verdict()) {
            return "was " + then.verdict().word();
        }
        String use = RowText.use(then);
        return use.equals(RowText.use(row)) || use.isEmpty() ? "" : "was " + use;
    }

    private static String counts(Ledger ledger, Subject subject) {
        List<String> parts = new ArrayList<>();
        for (Verdict verdict : Verdict.values()) {
            long count = ledger.rows().stream()
                    .filter(row -> row.subject() == subject && row.verdict() == verdict)
                    .count();
            if (count > 0) {
                parts.add(count + " " + verdict.word());
            }
        }
        return String.join(", ", parts);
    }
}

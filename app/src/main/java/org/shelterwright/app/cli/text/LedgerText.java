package org.shelterwright.app.cli.text;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.shelterwright.app.cli.terminal.Shown;
import org.shelterwright.app.cli.terminal.TextTable;
import org.shelterwright.app.cli.terminal.TextTable.Column;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.Verdict;

/** A ledger in plain text. */
public final class LedgerText {
    private static final String INDENT = "    ";
    private static final int MOST_IDS = 6;

    private LedgerText() {}

    /** The verdict on the whole in one line. */
    public static String headline(String name, Ledger ledger) {
        if (ledger.allMet()) {
            long close = ledger.count(Verdict.CLOSE);
            return name + ": every limit is met" + (close == 0 ? "." : ", " + close + " of them closely.");
        }
        long broken = ledger.count(Verdict.BROKEN);
        long open = ledger.count(Verdict.NOT_ASSESSED);
        List<String> parts = new ArrayList<>();
        if (broken > 0) {
            parts.add(broken + " broken");
        }
        if (open > 0) {
            parts.add(open + " not assessed");
        }
        return name + ": " + String.join(", ", parts) + " of "
                + count(ledger.rows().size()) + ".";
    }

    /** One line a subject: its worst verdict, and how many rows have which. */
    public static List<String> subjects(Ledger ledger) {
        TextTable table = new TextTable(
                Column.text("Subject"),
                Column.text("Verdict"),
                Column.figures("broken"),
                Column.figures("close"),
                Column.figures("not assessed"),
                Column.figures("met"));
        for (Map.Entry<Subject, Verdict> subject : ledger.bySubject().entrySet()) {
            List<Row> rows = ledger.rows().stream()
                    .filter(row -> row.subject() == subject.getKey())
                    .toList();
            table.row(
                    subject.getKey().title(),
                    subject.getValue().word(),
                    count(rows, Verdict.BROKEN),
                    count(rows, Verdict.CLOSE),
                    count(rows, Verdict.NOT_ASSESSED),
                    count(rows, Verdict.MET));
        }
        return table.lines();
    }

    /**
     * Rows as a table, each that is not met with its sentences below it; with {@code detailed} all of them. Load states are
     * numbered and told below.
     */
    public static List<String> rows(List<Row> rows, Layout layout, boolean detailed) {
        TextTable table = new TextTable(
                Column.text("Verdict"),
                Column.figures("Use"),
                Column.figures("Demand"),
                Column.figures("Capacity"),
                Column.text("Unit"),
                Column.figures("State"),
                Column.text("Limit"));
        List<String> states = new ArrayList<>();
        for (Row row : rows) {
            boolean figures = row.use() != null && !bare(row);
            table.row(
                    row.verdict().word(),
                    figures ? use(row) : "-",
                    figures ? Shown.figure(row.demand()) : "-",
                    figures ? Shown.figure(row.capacity()) : "-",
                    row.unit(),
                    state(row, states),
                    row.title());
            if (detailed || row.verdict() != Verdict.MET) {
                notes(row, layout).forEach(table::note);
            }
        }
        List<String> lines = new ArrayList<>(table.lines());
        if (!states.isEmpty()) {
            lines.add("");
            lines.addAll(legend(states));
        }
        return lines;
    }

    private static List<String> legend(List<String> states) {
        TextTable table = new TextTable(Column.figures("State"), Column.text("is"));
        for (int i = 0; i < states.size(); i++) {
            table.row(Integer.toString(i + 1), states.get(i));
        }
        return table.lines();
    }

    private static String state(Row row, List<String> states) {
        if (row.doesNotApply()) {
            return "-";
        }
        if (row.state().equals("always")) {
            return row.state();
        }
        if (!states.contains(row.state())) {
            states.add(row.state());
        }
        return Integer.toString(states.indexOf(row.state()) + 1);
    }

    /** The rows that a short ledger shows: all that are not met, and the tightest of each limit that is and applies. */
    public static List<Row> shortened(List<Row> rows) {
        Set<String> shown = new HashSet<>();
        return rows.stream()
                .filter(row -> row.verdict() != Verdict.MET || !row.doesNotApply() && shown.add(row.limit()))
                .toList();
    }

    /** Where nothing is allowed there is no share of it: more is over. */
    static String use(Row row) {
        return row.use() == null ? "-" : row.share() == null ? "over" : Shown.use(row.share());
    }

    private static List<String> notes(Row row, Layout layout) {
        List<String> notes = new ArrayList<>();
        notes.add(INDENT + row.finding());
        String mend = row.mend();
        if (mend != null) {
            notes.add(INDENT + mend);
        }
        layout.acceptance(row.limit(), row.units()).ifPresent(accepted -> notes.add(INDENT + accepted.sentence()));
        notes.add(INDENT + source(row));
        return notes;
    }

    /** Where the limit comes from, its id and the ids of what the row concerns. */
    static String source(Row row) {
        List<String> ids = row.units().subList(0, Math.min(MOST_IDS, row.units().size()));
        int more = row.units().size() - ids.size();
        String of = (ids.isEmpty() ? "" : ": " + String.join(", ", ids)) + (more == 0 ? "" : " and " + more + " more");
        return "Source: " + row.source().text() + "  [" + row.limit() + of + "]";
    }

    private static boolean bare(Row row) {
        return row.unit().isEmpty() && Double.valueOf(0).equals(row.capacity()) && row.verdict() == Verdict.MET;
    }

    private static String count(List<Row> rows, Verdict verdict) {
        long count = rows.stream().filter(row -> row.verdict() == verdict).count();
        return count == 0 ? "-" : String.format(Locale.ROOT, "%d", count);
    }

    private static String count(int rows) {
        return rows == 1 ? "1 limit" : rows + " limits";
    }
}

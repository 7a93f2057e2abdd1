package org.shelterwright.app.report;

import java.util.List;
import org.shelterwright.app.elevation.BayLimits;
import org.shelterwright.app.sheet.Columns;
import org.shelterwright.app.sheet.Columns.Column;
import org.shelterwright.app.sheet.Flow;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.ledger.racks.FilledBay;

/** The ledger rows of one subject as a table on a sheet of that subject, the tightest first. */
final class LimitTable {
    private static final List<Column> COLUMNS = List.of(
            new Column("Limit", "", 72, false),
            new Column("State that governs", "", 58, false),
            new Column("Verdict", "", 28, false),
            new Column("Demand", "", 28, true),
            new Column("Capacity", "", 28, true),
            new Column("Margin", "", 28, true),
            new Column("Use", "", 20, true));

    private LimitTable() {}

    static void set(Flow flow, Typeface typeface, Issue issue, Subject subject) {
        Columns columns = new Columns(typeface, COLUMNS);
        columns.head(flow);
        for (Row row : rows(issue, subject)) {
            boolean plain = RowText.plain(row);
            columns.row(
                    flow,
                    List.of(
                            row.title(),
                            row.state(),
                            row.verdict().word(),
                            plain ? "" : RowText.amount(row, row.demand()),
                            plain ? "" : RowText.amount(row, row.capacity()),
                            RowText.margin(row),
                            RowText.use(row)),
                    false);
        }
    }

    /** The limits of a bay in few words, the tightest first. */
    static List<BayLimits.Line> of(Issue issue, FilledBay bay) {
        return rows(issue, Subject.RACKS).stream()
                .flatMap(row -> bay.subject(row).map(what -> line(what, row)).stream())
                .toList();
    }

    private static BayLimits.Line line(String what, Row row) {
        boolean plain = RowText.plain(row);
        return new BayLimits.Line(
                what,
                plain ? "" : RowText.amount(row, row.demand()),
                plain ? "" : RowText.amount(row, row.capacity()),
                row.verdict().word());
    }

    /** The findings of the rows that are not met in full, with what would mend them. */
    static void findings(Flow flow, Issue issue, Subject subject) {
        List<Row> rows = rows(issue, subject);
        List<Row> open =
                rows.stream().filter(row -> row.verdict() != Verdict.MET).toList();
        for (Row row : open) {
            String mend = row.mend();
            flow.paragraph(row.verdict().word() + ": " + row.finding() + (mend == null ? "" : " " + mend));
        }
        if (open.size() < rows.size()) {
            flow.paragraph((open.isEmpty() ? "Every limit above is met" : "Every other limit above is met")
                    + "; the ledger has the source of each.");
        }
    }

    private static List<Row> rows(Issue issue, Subject subject) {
        return issue.ledger().rows().stream()
                .filter(row -> row.subject() == subject)
                .toList();
    }
}

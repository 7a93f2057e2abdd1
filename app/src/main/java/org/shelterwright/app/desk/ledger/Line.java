package org.shelterwright.app.desk.ledger;

import java.util.Optional;
import org.shelterwright.app.desk.session.Finding;
import org.shelterwright.app.report.RowGroup;
import org.shelterwright.app.report.RowText;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;

/** One line of the column. */
sealed interface Line {

    /** The subject of the lines below it. */
    record Heading(Subject subject, String counts) implements Line {}

    /**
     * A limit, or several that say the same of different units and have no figures of their own.
     *
     * @param mark number under which view and documents name it, such as "F1"; empty if it is met
     * @param before what it was when the layout was last saved, such as "was 0.88"; empty if the same
     * @param accepted whether somebody has accepted it with a reason
     */
    record Entry(RowGroup group, String mark, String before, boolean accepted) implements Line {
        Row row() {
            return group.row();
        }

        Finding finding() {
            return Finding.of(row());
        }

        /** What a screen reader says of it. */
        String spoken() {
            Row row = row();
            String figures = RowText.figures(row);
            String use = RowText.use(row);
            return (mark.isEmpty() ? "" : mark + ", ") + row.verdict().word() + ": " + row.title()
                    + (use.isEmpty() ? "" : ", use " + use)
                    + (figures.isEmpty() ? "" : ", " + figures)
                    + (accepted ? ", accepted" : "")
                    + (before.isEmpty() ? "" : ", " + before) + ". " + row.finding();
        }

        boolean holds(Finding finding) {
            return group.rows().stream().map(Finding::of).anyMatch(finding::equals);
        }
    }

    /** That met rows with more to spare are left out. */
    record More(int rows) implements Line {}

    static Optional<Entry> entry(Line line) {
        return line instanceof Entry entry ? Optional.of(entry) : Optional.empty();
    }
}

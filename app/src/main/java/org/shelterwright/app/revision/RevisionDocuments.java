package org.shelterwright.app.revision;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.pdf.Pdf;
import org.shelterwright.app.report.Document;
import org.shelterwright.app.report.Issue;
import org.shelterwright.app.svg.Svg;
import org.shelterwright.app.tables.Csv;
import org.shelterwright.app.tables.Table;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.revision.LimitShift;
import org.shelterwright.layouts.revision.Revision;
import org.shelterwright.layouts.revision.StepShift;
import org.shelterwright.layouts.revision.UnitShift;
import org.shelterwright.layouts.revision.WireShift;

/** Makes the documents of a comparison of two revisions. The same revisions give the same bytes. Not for several threads. */
public final class RevisionDocuments {
    private final String program;
    private final Typeface typeface = new Typeface();

    /** @param program program and version, such as "Shelterwright 0.1.0" */
    public RevisionDocuments(String program) {
        this.program = program;
    }

    /** The page as PDF, and everything that differs as one table. */
    public List<Document> write(Revision revision, LocalDate date) {
        Drawing page = sheet(revision, date);
        return List.of(
                new Document(
                        "revisions.pdf",
                        "Both revisions on one page",
                        new Pdf(program).write(page.title(), date, List.of(page))),
                new Document("revisions.svg", "The same as a drawing", new Svg(typeface).write(page)),
                new Document("revisions.csv", "All that differs, as a table", Csv.write(table(revision))));
    }

    /** The page. */
    public Drawing sheet(Revision revision, LocalDate date) {
        return new RevisionSheet(typeface).of(revision, program + ", checked " + date + ". " + Issue.CAUTION);
    }

    private static Table table(Revision revision) {
        List<List<@Nullable Object>> rows = new ArrayList<>();
        for (UnitShift one : revision.units()) {
            rows.add(Arrays.asList(
                    "unit", one.name(), RevisionWords.moved(one), one.turned() ? "turned" : "", one.massKg(), "kg"));
        }
        for (String name : revision.reshaped()) {
            rows.add(Arrays.asList("unit", name, "of another size or kind", null, null, null));
        }
        for (WireShift one : revision.wires()) {
            rows.add(Arrays.asList("wire", one.wire(), "cut length", mm(one.first()), mm(one.second()), "mm"));
        }
        for (LimitShift one : revision.limits()) {
            rows.add(Arrays.asList(
                    "check", one.title(), one.limit(), verdict(one.first()), verdict(one.second()), null));
        }
        for (StepShift one : revision.steps()) {
            rows.add(Arrays.asList(
                    "step",
                    one.name(),
                    one.other() ? "other work" : "another number",
                    one.first(),
                    one.second(),
                    null));
        }
        revision.reissues()
                .forEach(one -> rows.add(Arrays.asList("document", one.document(), one.why(), null, null, null)));
        return new Table("Differences", List.of("kind", "name", "what", "before", "after", "unit"), rows);
    }

    private static @Nullable Object mm(@Nullable Long micrometres) {
        return micrometres == null ? null : Double.valueOf(micrometres / 1000.0);
    }

    private static @Nullable Object verdict(@Nullable Row row) {
        return row == null ? null : row.verdict().word();
    }
}

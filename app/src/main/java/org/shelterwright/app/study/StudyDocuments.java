package org.shelterwright.app.study;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.look.Ground;
import org.shelterwright.app.pdf.Pdf;
import org.shelterwright.app.report.Document;
import org.shelterwright.app.report.Issue;
import org.shelterwright.app.svg.Svg;
import org.shelterwright.app.tables.Csv;
import org.shelterwright.app.tables.Table;
import org.shelterwright.app.tables.Xlsx;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.study.SealedStudy;
import org.shelterwright.layouts.study.results.Measure;
import org.shelterwright.layouts.study.results.RunResult;

/** Makes the documents of a study. The same results give the same bytes, workbooks excepted. Not for several threads. */
public final class StudyDocuments {
    private final String program;
    private final Typeface typeface = new Typeface();

    /** @param program program and version, such as "Shelterwright 0.1.0" */
    public StudyDocuments(String program) {
        this.program = program;
    }

    /** The table of runs as CSV and XLSX. */
    public List<Document> tables(SealedStudy study, List<RunResult> runs) {
        Table table = StudyTable.of(study.study(), runs);
        return List.of(
                new Document("runs.csv", "Runs as a table", Csv.write(table)),
                new Document("runs.xlsx", "Runs as a workbook", Xlsx.write(List.of(table))));
    }

    /**
     * Two measures against each other, as SVG and PDF.
     *
     * @param date the date that the PDF bears
     * @throws IllegalArgumentException with a sentence if no run has both figures
     */
    public List<Document> tradeOff(
            SealedStudy study, List<RunResult> runs, Measure across, Measure up, LocalDate date) {
        Drawing drawing = new TradeOff(typeface, Ground.LIGHT).of(study.study().name(), runs, across, up, foot(study));
        String name = "trade-off-" + across.id() + "-" + up.id();
        String what = across.title() + " against " + up.title();
        return List.of(
                new Document(name + ".svg", what, new Svg(typeface).write(drawing)),
                new Document(name + ".pdf", what, new Pdf(program).write(drawing.title(), date, List.of(drawing))));
    }

    /** Chosen runs side by side, as PDF and as a table of their ledgers. */
    public List<Document> comparison(SealedStudy study, List<Compared> runs, LocalDate date) {
        List<Drawing> pages = comparisonPages(study, runs);
        String title = study.study().name() + ", comparison";
        return List.of(
                new Document("comparison.pdf", "Runs side by side", new Pdf(program).write(title, date, pages)),
                new Document("comparison.csv", "Their ledgers as a table", Csv.write(ledgers(runs))));
    }

    /** The pages of the comparison, to be shown. */
    public List<Drawing> comparisonPages(SealedStudy study, List<Compared> runs) {
        return new ComparisonPages(typeface, study.study().name(), runs, foot(study)).pages();
    }

    private static Table ledgers(List<Compared> runs) {
        List<String> heads = new ArrayList<>(List.of("limit"));
        for (Compared run : runs) {
            for (String part : List.of("verdict", "demand", "capacity", "unit", "use", "what")) {
                heads.add("run " + run.result().run() + " " + part);
            }
        }
        List<List<@Nullable Object>> rows = new ArrayList<>();
        for (LimitLine line : LimitLine.of(runs)) {
            List<@Nullable Object> cells = new ArrayList<>();
            cells.add(line.limit());
            for (Row row : line.rows()) {
                cells.addAll(
                        row == null
                                ? Arrays.asList(null, null, null, null, null, null)
                                : Arrays.asList(
                                        row.verdict().word(),
                                        row.demand(),
                                        row.capacity(),
                                        row.unit(),
                                        row.use(),
                                        row.title()));
            }
            rows.add(cells);
        }
        return new Table("Ledgers", heads, rows);
    }

    private String foot(SealedStudy study) {
        return program + ", study " + study.study().id() + ", " + study.study().moves() + " moves a run. "
                + Issue.SHORT_CAUTION;
    }
}

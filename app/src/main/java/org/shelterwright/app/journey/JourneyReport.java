package org.shelterwright.app.journey;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.pdf.Pdf;
import org.shelterwright.app.report.Document;
import org.shelterwright.app.report.Issue;
import org.shelterwright.app.report.SafeFolder;
import org.shelterwright.app.sheet.Particulars;
import org.shelterwright.app.svg.Svg;
import org.shelterwright.app.tables.Csv;
import org.shelterwright.app.tables.Table;
import org.shelterwright.app.tables.Xlsx;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.layouts.ledger.transport.JourneyLedger;
import org.shelterwright.layouts.transport.scene.JourneyScene;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.solver.transport.WaysToGo.Way;

/**
 * Writes all documents of a journey into a folder, numbered from 01, with a contents sheet. The same scene, ledger, ways and particulars
 * give the same bytes, workbooks excepted (same cells). Not for several threads.
 */
public final class JourneyReport {
    private final String program;
    private final Typeface typeface = new Typeface();
    private final Svg svg = new Svg(typeface);
    private final Pdf pdf;
    private final List<Document> documents = new ArrayList<>();

    /** @param program program and version, such as "Shelterwright 0.1.0" */
    public JourneyReport(String program) {
        this.program = program;
        this.pdf = new Pdf(program);
    }

    /**
     * Makes all documents, then writes them. Either all are written or none.
     *
     * @param ways ways to go; empty if they were not compared
     * @return the files, in the order of the contents sheet, which comes first
     * @throws org.shelterwright.catalog.json.InputException if the folder cannot be written
     */
    public List<Document> write(
            JourneyScene scene, JourneyLedger ledger, List<Way> ways, Particulars particulars, Path folder) {
        JourneyIssue issue = new JourneyIssue(scene, ledger, particulars, program);
        documents.clear();
        legs(issue);
        loads(issue);
        add(
                3,
                "packing-lists.pdf",
                "Packing lists and unloading order, car by car",
                pdf(issue, "Packing lists", new PackingPages(typeface, issue).pages()));
        Table positions = JourneyTables.positions(issue);
        add(3, "positions.csv", "Positions as a table", Csv.write(positions));
        add(
                4,
                "placards.pdf",
                "Placards of mass and centre, one a piece",
                pdf(issue, "Placards", new PlacardPages(typeface, issue).pages()));
        Table lashings = JourneyTables.lashings(issue);
        add(5, "lashings.csv", "Lashings as a table", Csv.write(lashings));
        List<Table> tables = new ArrayList<>(
                List.of(JourneyTables.governing(issue), JourneyTables.ledger(issue), positions, lashings));
        if (!ways.isEmpty()) {
            Table table = JourneyTables.ways(issue, ways);
            tables.add(table);
            add(
                    6,
                    "ways-to-go.pdf",
                    "Ways to go: each piece on each car",
                    pdf(issue, "Ways to go", new WaysPages(typeface, issue, ways).pages()));
            add(6, "ways-to-go.csv", "Ways to go as a table", Csv.write(table));
        }
        add(7, "journey.xlsx", "All tables as a workbook", Xlsx.write(tables));
        List<Document> all = withContents(issue);
        new SafeFolder(folder).write(all);
        return all;
    }

    private void legs(JourneyIssue issue) {
        add(
                1,
                "does-it-go.pdf",
                "Does it go: leg by leg and unit by unit what governs, then every limit",
                pdf(issue, "Does it go", new JourneyPages(typeface, issue).pages()));
        add(1, "legs.csv", "Leg by unit as a table", Csv.write(JourneyTables.governing(issue)));
        add(1, "ledger.csv", "Every limit as a table", Csv.write(JourneyTables.ledger(issue)));
    }

    private void loads(JourneyIssue issue) {
        for (LegScene leg : issue.scene().legs()) {
            for (PlacedLoad load : leg.loads()) {
                List<Drawing> pages = new LoadSheetPages(typeface, issue, leg, load).pages();
                String name = "load-sheet-leg-" + leg.number() + "-" + load.id();
                String what = "Load sheet, " + leg.state() + ", " + load.name();
                add(2, name + ".pdf", what, pdf(issue, what, pages));
                add(2, name + ".svg", what + ", first page to draw on", svg.write(pages.get(0)));
            }
        }
    }

    private void add(int number, String name, String line, byte[] bytes) {
        documents.add(new Document("0" + number + "-" + name, line, bytes));
    }

    private byte[] pdf(JourneyIssue issue, String what, List<Drawing> pages) {
        return pdf.write(
                issue.name() + ", " + what.toLowerCase(Locale.ROOT),
                issue.particulars().date(),
                pages);
    }

    private List<Document> withContents(JourneyIssue issue) {
        StringBuilder text = new StringBuilder();
        line(
                text,
                issue.name() + ": documents of the journey \"" + issue.journey().id() + "\"");
        line(text, "");
        line(text, "Verdict        " + issue.verdicts());
        line(text, "Date of check  " + issue.particulars().date());
        line(text, "Revision       " + issue.particulars().revision());
        line(text, "Owner          " + issue.particulars().owner());
        line(text, "Made with      " + issue.madeWith());
        line(text, "");
        int width =
                documents.stream().mapToInt(one -> one.file().length()).max().orElse(0) + 2;
        documents.forEach(one ->
                line(text, one.file() + " ".repeat(width - one.file().length()) + one.line()));
        line(text, "");
        line(text, Issue.CAUTION);
        List<Document> all = new ArrayList<>();
        all.add(new Document("00-contents.txt", "Contents", text.toString().getBytes(StandardCharsets.UTF_8)));
        all.addAll(documents);
        return all;
    }

    private static void line(StringBuilder text, String line) {
        text.append(line).append('\n');
    }
}

package org.shelterwright.app.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.sheet.Columns;
import org.shelterwright.app.sheet.Columns.Column;
import org.shelterwright.app.sheet.Flow;
import org.shelterwright.app.sheet.SheetSize;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;

/** The mass statement as a report: a weight and balance sheet for each situation, then ratings and reserves. */
final class MassPages {

    private static final List<Column> SHEET = List.of(
            new Column("Ref.", "", 10, true),
            new Column("Item", "", 58, false),
            new Column("Group", "", 26, false),
            new Column("Qty", "", 8, true),
            new Column("Mass", "kg", 17, true),
            new Column("Src", "", 8, false),
            new Column("Growth", "%", 14, true),
            new Column("±", "kg", 13, true),
            new Column("With growth", "kg", 20, true),
            new Column("Arm x", "mm", 15, true),
            new Column("Arm y", "mm", 15, true),
            new Column("Arm z", "mm", 15, true),
            new Column("Moment x", "kg·m", 17.5, true),
            new Column("Moment y", "kg·m", 17.5, true),
            new Column("Moment z", "kg·m", 17.5, true));

    private static final List<Column> LIMITS = List.of(
            new Column("Limit", "", 62, false),
            new Column("Governing load state", "", 104, false),
            new Column("There", "", 28, true),
            new Column("Allowed", "", 28, true),
            new Column("Reserve", "", 28, true),
            new Column("Use", "", 14, true));

    private final Issue issue;
    private final Typeface typeface;
    private final Flow flow;

    MassPages(Typeface typeface, Issue issue) {
        this.issue = issue;
        this.typeface = typeface;
        this.flow = new Flow(
                typeface,
                SheetSize.A4_LYING,
                issue.name() + ", mass statement",
                "layout " + issue.scene().brief().id(),
                issue.foot());
    }

    List<Drawing> pages(List<MassSheet> sheets) {
        flow.paragraph(
                "Datum: inside rear right floor corner of the body. x forward from the inside of the rear wall, y to the"
                        + " left from the inside of the right wall, z up from the floor (axes after ISO 8855). Moment = mass with"
                        + " growth × arm.");
        flow.paragraph(
                "Source: E estimated, C calculated, S supplier, W weighed. Contents of tanks are stated full; the"
                        + " load states that govern each limit are searched for, and named below.");
        sheets.forEach(this::sheet);
        limits();
        flow.gap(3);
        flow.pair("Made with", issue.madeWith());
        flow.pair("Date of check", issue.particulars().date().toString());
        flow.paragraph(Issue.CAUTION, 0, Weight.MEDIUM);
        return flow.pages();
    }

    private void sheet(MassSheet sheet) {
        flow.heading(sheet.situation() == Situation.ON_STATION ? "On station" : "On the road");
        Columns columns = new Columns(typeface, SHEET);
        columns.head(flow);
        sheet.lines().forEach(line -> columns.row(flow, cells(line), false));
        sheet.subtotals().forEach(total -> columns.row(flow, cells("Subtotal " + total.name(), total), true));
        columns.row(flow, cells("Total " + sheet.total().name(), sheet.total()), true);
        if (sheet.total().missing() > 0) {
            flow.gap(1.5);
            flow.paragraph(sheet.total().missing()
                    + " lines lack a mass, its growth or its centre (shown as ?) and do not" + " count in the sums.");
        }
    }

    private static List<String> cells(MassLine line) {
        Point arm = line.arm();
        double[] moments = line.momentsKgM();
        List<String> cells = new ArrayList<>(List.of(
                line.reference(),
                line.name(),
                line.group(),
                "1",
                figure(line.massKg(), 1, 1),
                String.valueOf(line.source()).strip(),
                figure(line.growthShare(), 100, 1),
                figure(line.uncertaintyKg(), 1, 1),
                figure(line.grownKg(), 1, 1)));
        cells.addAll(
                arm == null ? List.of("?", "?", "?") : List.of(rounded(arm.x()), rounded(arm.y()), rounded(arm.z())));
        cells.addAll(
                moments == null
                        ? List.of("?", "?", "?")
                        : Arrays.stream(moments)
                                .mapToObj(m -> Numerals.of(m, 1))
                                .toList());
        return cells;
    }

    private static List<String> cells(String name, MassSheet.Total total) {
        List<String> cells = new ArrayList<>(List.of("", name, "", "", "", "", "", "", Numerals.of(total.massKg(), 1)));
        total.centreM()
                .ifPresentOrElse(
                        centre -> Arrays.stream(centre).forEach(m -> cells.add(Numerals.of(m * 1000, 0))),
                        () -> cells.addAll(List.of("", "", "")));
        cells.add(Numerals.of(total.mx(), 1));
        cells.add(Numerals.of(total.my(), 1));
        cells.add(Numerals.of(total.mz(), 1));
        return cells;
    }

    private void limits() {
        flow.heading("Ratings, reserves and governing load states");
        List<Row> rows = issue.ledger().rows().stream()
                .filter(row -> row.subject() == Subject.MASS || row.subject() == Subject.AXLES)
                .toList();
        if (rows.isEmpty()) {
            flow.paragraph("No limit of mass or axle load was checked.");
            return;
        }
        Columns columns = new Columns(typeface, LIMITS);
        columns.head(flow);
        for (Row row : rows) {
            boolean plain = RowText.plain(row);
            columns.row(
                    flow,
                    List.of(
                            row.title(),
                            row.state(),
                            plain ? row.verdict().word() : RowText.amount(row, row.demand()),
                            plain ? "" : RowText.amount(row, row.capacity()),
                            RowText.margin(row),
                            RowText.use(row)),
                    false);
        }
    }

    private static String figure(@Nullable Double value, double factor, int decimals) {
        return value == null ? "?" : Numerals.of(value * factor, decimals);
    }

    private static String rounded(int micrometres) {
        return Numerals.of(micrometres / (double) Lengths.MM, 0);
    }
}

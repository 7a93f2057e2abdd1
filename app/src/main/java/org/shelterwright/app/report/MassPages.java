package org.shelterwright.app.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.sheet.Columns;
import org.shelterwright.app.sheet.Columns.Column;
import org.shelterwright.app.sheet.Flow;
import org.shelterwright.app.sheet.SheetSize;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.statement.Inertia;
import org.shelterwright.layouts.statement.MassLine;
import org.shelterwright.layouts.statement.MassStatement;
import org.shelterwright.layouts.statement.StateTotal;

/** The mass statement as a report: a weight and balance sheet, its load states, its axles, ratings and reserves. */
final class MassPages {

    private static final String UNKNOWN = "?";

    private static final List<Column> LINES = List.of(
            new Column("Item", "", 47, false),
            new Column("Position", "label", 31, false),
            new Column("Qty", "", 8, true),
            new Column("Unit mass", "kg", 16.5, true),
            new Column("Src", "", 8, false),
            new Column("Growth", "%", 13, true),
            new Column("Mass", "kg", 16.5, true),
            new Column("±", "kg", 12, true),
            new Column("Arm x", "mm", 14, true),
            new Column("Arm y", "mm", 14, true),
            new Column("Arm z", "mm", 14, true),
            new Column("Moment x", "kg·m", 16.5, true),
            new Column("Moment y", "kg·m", 16.5, true),
            new Column("Moment z", "kg·m", 16.5, true),
            new Column("Counts", "", 18.5, false));

    private static final List<Column> STATES = List.of(
            new Column("What", "", 52, false),
            new Column("Load state", "", 76, false),
            new Column("Mass", "kg", 18, true),
            new Column("±", "kg", 14, true),
            new Column("Centre x", "mm", 17, true),
            new Column("Centre y", "mm", 17, true),
            new Column("Centre z", "mm", 17, true),
            new Column("Ixx", "kg·m²", 17, true),
            new Column("Iyy", "kg·m²", 17, true),
            new Column("Izz", "kg·m²", 17, true));

    private static final List<Column> AXLES = List.of(
            new Column("Vehicle and load state", "", 110, false),
            new Column("Axle", "", 42, false),
            new Column("Left", "kg", 18, true),
            new Column("Right", "kg", 18, true),
            new Column("Load", "kg", 18, true),
            new Column("Rating", "kg", 18, true),
            new Column("Reserve", "kg", 20, true),
            new Column("Reserve", "%", 18, true));

    private static final List<Column> LIMITS = List.of(
            new Column("Limit", "", 78, false),
            new Column("Governing load state", "", 92, false),
            new Column("Demand", "", 27, true),
            new Column("Capacity", "", 27, true),
            new Column("Reserve", "", 25, true),
            new Column("Use", "", 13, true));

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

    List<Drawing> pages() {
        MassStatement statement = issue.masses();
        limits();
        states(statement);
        axles(statement);
        flow.heading("Lines");
        flow.paragraph(
                "Datum: " + MassStatement.DATUM + " (axes after ISO 8855). Moment = mass with growth × arm. Source: E"
                        + " estimated, C calculated, S supplier, W weighed, L set by the load state.");
        lines(statement.lines());
        if (!statement.trailer().isEmpty()) {
            flow.heading("Lines of the trailer");
            flow.paragraph("Datum: " + MassStatement.TRAILER_DATUM + ".");
            lines(statement.trailer());
        }
        subtotals(statement);
        gaps(statement);
        flow.heading("Issue", 46);
        flow.pair("Made with", issue.madeWith());
        flow.pair("Date of check", issue.particulars().date().toString());
        flow.paragraph(Issue.CAUTION, 0, Weight.MEDIUM);
        return flow.pages();
    }

    private void lines(List<MassLine> lines) {
        Columns columns = new Columns(typeface, LINES);
        columns.head(flow);
        for (MassLine line : lines) {
            Point arm = line.arm();
            columns.row(
                    flow,
                    List.of(
                            line.item(),
                            line.label(),
                            Integer.toString(line.quantity()),
                            figure(line.unitMassKg(), 1),
                            String.valueOf(line.source()),
                            figure(line.growthShare() == null ? null : Double.valueOf(line.growthShare() * 100), 1),
                            figure(line.massKg(), 1),
                            figure(line.uncertaintyKg(), 1),
                            arm == null ? UNKNOWN : rounded(arm.x()),
                            arm == null ? UNKNOWN : rounded(arm.y()),
                            arm == null ? UNKNOWN : rounded(arm.z()),
                            figure(line.momentXKgM(), 1),
                            figure(line.momentYKgM(), 1),
                            figure(line.momentZKgM(), 1),
                            line.when().words()),
                    false);
        }
    }

    private void subtotals(MassStatement statement) {
        flow.heading("Subtotals by group, on the road, tanks full");
        Columns columns = new Columns(typeface, LINES);
        columns.head(flow);
        for (MassStatement.GroupTotal group : statement.groups()) {
            List<String> cells = new ArrayList<>(List.of(group.group(), "", "", "", "", ""));
            cells.add(Numerals.of(group.massKg(), 1));
            cells.addAll(List.of("", "", "", ""));
            Stream.of(group.momentXKgM(), group.momentYKgM(), group.momentZKgM())
                    .forEach(moment -> cells.add(Numerals.of(moment, 1)));
            cells.add("");
            columns.row(flow, cells, true);
        }
    }

    private void states(MassStatement statement) {
        flow.heading("Totals by load state");
        flow.paragraph(
                "With growth. ± is the root of the sum of squares of the uncertainties; the ledger takes their full sum in"
                        + " the adverse direction. Inertia about the centre of mass.");
        Columns columns = new Columns(typeface, STATES);
        columns.head(flow);
        for (StateTotal total : statement.states()) {
            Inertia inertia = total.inertia();
            columns.row(
                    flow,
                    List.of(
                            total.what(),
                            total.state(),
                            figure(total.massKg(), 0),
                            Numerals.of(total.uncertaintyRssKg(), 0),
                            figure(total.xMm(), 0),
                            figure(total.yMm(), 0),
                            figure(total.zMm(), 0),
                            inertia == null ? "" : Numerals.of(inertia.xx(), 0),
                            inertia == null ? "" : Numerals.of(inertia.yy(), 0),
                            inertia == null ? "" : Numerals.of(inertia.zz(), 0)),
                    false);
        }
    }

    private void axles(MassStatement statement) {
        if (statement.states().stream().allMatch(total -> total.axles().isEmpty())) {
            return;
        }
        flow.heading("Axles and wheels");
        Columns columns = new Columns(typeface, AXLES);
        columns.head(flow);
        for (StateTotal total : statement.states()) {
            for (StateTotal.AxleTotal axle : total.axles()) {
                Double reserve = axle.reserveKg();
                Double rating = axle.ratingKg();
                columns.row(
                        flow,
                        List.of(
                                total.what() + ", " + total.state(),
                                axle.axle(),
                                Numerals.of(axle.leftKg(), 0),
                                Numerals.of(axle.rightKg(), 0),
                                Numerals.of(axle.loadKg(), 0),
                                figure(rating, 0),
                                figure(reserve, 0),
                                figure(
                                        reserve == null || rating == null || rating == 0
                                                ? null
                                                : Double.valueOf(100 * reserve / rating),
                                        1)),
                        false);
            }
        }
    }

    private void gaps(MassStatement statement) {
        if (statement.gaps().isEmpty()) {
            return;
        }
        flow.heading("What is missing");
        statement.gaps().forEach(gap -> flow.paragraph(gap.sentence()));
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

    private static String figure(@Nullable Double value, int decimals) {
        return value == null ? UNKNOWN : Numerals.of(value, decimals);
    }

    private static String rounded(int micrometres) {
        return Numerals.of(micrometres / (double) Lengths.MM, 0);
    }
}

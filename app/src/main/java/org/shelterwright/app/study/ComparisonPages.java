package org.shelterwright.app.study;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.drawing.Group;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.look.VerdictSign;
import org.shelterwright.app.report.Issue;
import org.shelterwright.app.report.RowText;
import org.shelterwright.app.sheet.Columns;
import org.shelterwright.app.sheet.Columns.Column;
import org.shelterwright.app.sheet.Flow;
import org.shelterwright.app.sheet.Lettering;
import org.shelterwright.app.sheet.SheetSize;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.view.Axonometry;
import org.shelterwright.app.view.OrderedPainting;
import org.shelterwright.app.view.PictureModel;
import org.shelterwright.app.view.Projection;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.study.results.Governing;
import org.shelterwright.layouts.study.results.Measure;

/** Chosen runs side by side: pictures, measures with differences, ledgers limit by limit, units that stand elsewhere. */
public final class ComparisonPages {
    /** Most runs that are compared on one page. */
    public static final int MOST = 4;

    private static final double FIRST_COLUMN = 62;
    private static final double SIGN = 1.5;
    private static final double SIGN_COLUMN = 4.6;

    private final Typeface typeface;
    private final List<Compared> runs;
    private final Flow flow;
    private final double width;

    /**
     * @param study name of the study
     * @param foot the line at the foot of every page
     */
    public ComparisonPages(Typeface typeface, String study, List<Compared> runs, String foot) {
        this.typeface = typeface;
        this.runs = List.copyOf(runs);
        this.flow = new Flow(typeface, SheetSize.A4_LYING, study + ", comparison", names(), foot);
        this.width = (flow.right() - flow.left() - FIRST_COLUMN) / runs.size();
    }

    public List<Drawing> pages() {
        pictures();
        measures();
        ledgers();
        for (int i = 1; i < runs.size(); i++) {
            new ShiftTable(typeface, runs.get(0), runs.get(i)).onto(flow);
        }
        flow.gap(3);
        flow.paragraph(Issue.CAUTION, 0, Weight.MEDIUM);
        return flow.pages();
    }

    private String names() {
        return String.join(", ", runs.stream().map(Compared::name).toList());
    }

    private void pictures() {
        double across = (flow.right() - flow.left()) / runs.size();
        double height = Math.min(105, across * 0.8);
        flow.add(height + 12, top -> {
            List<Shape> shapes = new ArrayList<>();
            for (int i = 0; i < runs.size(); i++) {
                double x = flow.left() + i * across;
                shapes.add(new Group(
                        runs.get(i).name(), picture(runs.get(i), new Bounds(x, top, x + across - 3, top + height))));
            }
            return shapes;
        });
    }

    private List<Shape> picture(Compared run, Bounds area) {
        PictureModel model = PictureModel.of(run.scene(), Situation.ON_STATION, Axonometry.FROM_REAR_RIGHT, true);
        Bounds inside = new Bounds(area.x0() + 3, area.y0() + 9, area.x1() - 3, area.y1() - 3);
        Projection projection = Projection.fitting(Axonometry.FROM_REAR_RIGHT, model.points(), inside);
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Polygon.of(area, Role.VIEW.colour(), null));
        shapes.addAll(new OrderedPainting(projection).shapes(model));
        shapes.addAll(VerdictSign.shapes(run.ledger().worst(), new Spot(area.x0() + 4, area.y0() + 4.4), 1.8));
        shapes.add(Lettering.bold(run.name(), new Spot(area.x0() + 8, area.y0() + 5.4), 2.5));
        shapes.add(Lettering.muted(
                run.scene().body().name() + ", seen from the rear right", new Spot(area.x0(), area.y1() + 4.5), 1.8));
        return shapes;
    }

    private void measures() {
        flow.heading(
                "Settings and measures, and differences from " + runs.get(0).name());
        Columns columns = columns();
        columns.head(flow);
        for (String axis : runs.get(0).result().settings().keySet()) {
            columns.row(
                    flow,
                    cells(axis, run -> String.valueOf(run.result().settings().get(axis))),
                    false);
        }
        columns.row(flow, cells("seed", run -> Long.toString(run.result().seed())), false);
        columns.row(flow, cells("governing limit", ComparisonPages::governing), false);
        for (Measure measure : Measure.values()) {
            if (measure != Measure.SECONDS
                    && runs.stream().anyMatch(run -> measure.of(run.result()).isPresent())) {
                columns.row(flow, cells(named(measure), run -> value(measure, run)), false);
            }
        }
    }

    private static String named(Measure measure) {
        String unit = measure.unit().equals("share") ? "%" : measure.unit();
        return measure.title() + (unit.isEmpty() ? "" : ", " + unit);
    }

    private String value(Measure measure, Compared run) {
        OptionalDouble value = measure.of(run.result());
        OptionalDouble first = measure.of(runs.get(0).result());
        if (value.isEmpty()) {
            return "";
        }
        double factor = measure.unit().equals("share") ? 100 : 1;
        String text = Numerals.short3(value.getAsDouble() * factor);
        if (run == runs.get(0) || first.isEmpty()) {
            return text;
        }
        double difference = (value.getAsDouble() - first.getAsDouble()) * factor;
        return text + "  (" + signed(difference) + ")";
    }

    static String signed(double difference) {
        String text = Numerals.short3(difference);
        return difference > 0 && !text.equals("0") ? "+" + text : text.equals("0") ? "same" : text;
    }

    private static String governing(Compared run) {
        Governing governing = run.result().governing();
        return governing == null ? "" : governing.title();
    }

    private void ledgers() {
        flow.heading("Ledgers side by side: the worst row of each limit");
        flow.paragraph("Use is demand over capacity. Left out are limits that are met with the same use everywhere.");
        flow.gap(2);
        List<Column> heads = new ArrayList<>(List.of(new Column("Limit", "", FIRST_COLUMN, false)));
        for (Compared run : runs) {
            heads.add(new Column("", "", SIGN_COLUMN, false));
            heads.add(new Column(run.name(), "", width - SIGN_COLUMN, false));
        }
        Columns columns = new Columns(typeface, heads);
        columns.head(flow);
        for (LimitLine line : LimitLine.of(runs)) {
            if (line.telling()) {
                columns.row(flow, ledgerCells(line), false, top -> signs(line, top));
            }
        }
    }

    private List<String> ledgerCells(LimitLine line) {
        List<String> cells = new ArrayList<>();
        cells.add(line.limit());
        for (Row row : line.rows()) {
            cells.add("");
            cells.add(ledgerCell(row));
        }
        return cells;
    }

    private static String ledgerCell(@Nullable Row row) {
        if (row == null) {
            return "";
        }
        if (row.doesNotApply()) {
            return "does not apply";
        }
        String use = RowText.use(row);
        return row.verdict().word()
                + (use.isEmpty() ? "" : ", use " + use)
                + (row.verdict() == Verdict.MET ? "" : ": " + row.title());
    }

    private List<Shape> signs(LimitLine line, double top) {
        List<Shape> shapes = new ArrayList<>();
        for (int i = 0; i < line.rows().size(); i++) {
            Row row = line.rows().get(i);
            if (row != null && !row.doesNotApply()) {
                double x = flow.left() + FIRST_COLUMN + i * width;
                shapes.addAll(VerdictSign.shapes(row.verdict(), new Spot(x + 3.4, top + 2.5), SIGN));
            }
        }
        return shapes;
    }

    private Columns columns() {
        List<Column> columns = new ArrayList<>();
        columns.add(new Column("", "", FIRST_COLUMN, false));
        runs.forEach(run -> columns.add(new Column(run.name(), "", width, false)));
        return new Columns(typeface, columns);
    }

    /** Gives a cell for each run. */
    @FunctionalInterface
    private interface Cell {
        String of(Compared run);
    }

    private List<String> cells(String name, Cell cell) {
        List<String> cells = new ArrayList<>();
        cells.add(name);
        runs.forEach(run -> cells.add(cell.of(run)));
        return cells;
    }
}

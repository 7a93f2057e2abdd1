package org.shelterwright.app.workpack;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.sheet.Columns;
import org.shelterwright.app.sheet.Columns.Column;
import org.shelterwright.app.sheet.Flow;
import org.shelterwright.app.sheet.Lettering;
import org.shelterwright.app.sheet.SheetSize;
import org.shelterwright.app.tables.Table;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.type.Wrap;
import org.shelterwright.layouts.boltdown.BoltDownPlan;
import org.shelterwright.layouts.boltdown.BoltDownStep;
import org.shelterwright.layouts.boltdown.Datum;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.order.Schedule;
import org.shelterwright.solver.order.Shift;

/** The work pack on paper: who does what when, step cards, lists, labels. */
public final class PaperPack {
    private static final List<Column> STEPS = List.of(
            new Column("Step", "", 11, true),
            new Column("Unit", "", 42, false),
            new Column("Through", "", 36, false),
            new Column("Who", "", 44, false),
            new Column("Begin", "min", 13, true),
            new Column("End", "min", 13, true),
            new Column("Critical", "", 15, false));
    /** A table of so few rows is not parted. */
    private static final int FEW = 8;

    private static final Set<String> NUMBERS = Set.of("pieces", "washers", "m");
    private static final double LABEL_WIDTH = 58;
    private static final double LABEL_HEIGHT = 35;
    private static final double LABEL_TEXT = 1.8;
    private static final int LABEL_LINES = 9;

    private final Typeface typeface;
    private final PackHead head;
    private final Scene scene;
    private final BoltDownPlan plan;
    private final Schedule schedule;
    private final Crew crew;

    public PaperPack(PackHead head, Scene scene, BoltDownPlan plan, Schedule schedule, Typeface typeface) {
        this.head = head;
        this.scene = scene;
        this.plan = plan;
        this.schedule = schedule;
        this.crew = new Crew(plan, schedule);
        this.typeface = typeface;
    }

    /** All pages but the labels. */
    public List<Drawing> pages() {
        List<Drawing> pages = new ArrayList<>(front());
        StepCard card = new StepCard(typeface, head, plan, new StepScenes(scene, plan, typeface));
        for (BoltDownStep step : plan.steps()) {
            pages.addAll(card.drawings(step, crew.who(step)));
        }
        return pages;
    }

    private Flow flow(String what) {
        return new Flow(typeface, SheetSize.A4, head.name() + ", " + what, "layout " + head.id(), head.foot());
    }

    private List<Drawing> front() {
        Flow flow = flow("work pack");
        flow.paragraph(head.caution(), 0, Weight.MEDIUM);
        for (String line : PackWords.BEFORE) {
            flow.paragraph(line);
        }
        flow.heading("Order");
        long minutes = Math.round(schedule.lengthMinutes());
        flow.paragraph(plan.steps().size() + " steps, " + minutes / 60 + " h " + minutes % 60 + " min with "
                + schedule.fitters() + (schedule.fitters() == 1 ? " fitter" : " fitters")
                + ". Nothing is brought in through a place where somebody works, and nobody works where another does. A delay"
                + " of what is critical delays the end.");
        if (!crew.moreHands().isEmpty()) {
            flow.paragraph(crew.moreHands(), 0, Weight.SEMIBOLD);
        }
        if (!plan.leftOut().isEmpty()) {
            flow.paragraph(
                    "Not in this order: "
                            + plan.leftOut().stream().map(unit -> unit.name()).collect(Collectors.joining(", ")) + ".",
                    0,
                    Weight.SEMIBOLD);
        }
        flow.gap(2);
        Columns columns = new Columns(typeface, STEPS);
        columns.head(flow);
        for (BoltDownStep step : plan.steps()) {
            List<Shift> shifts = schedule.shifts().stream()
                    .filter(shift -> shift.step() == step.number() && !shift.onBench())
                    .toList();
            var opening = step.passage().opening();
            columns.row(
                    flow,
                    List.of(
                            Integer.toString(step.number()),
                            step.unit().name(),
                            opening == null ? (step.passage().free() ? "outside" : "no way") : opening.name(),
                            crew.who(step),
                            Numerals.of(shifts.get(0).fromMinutes(), 0),
                            Numerals.of(shifts.get(shifts.size() - 1).toMinutes(), 0),
                            shifts.stream().anyMatch(Shift::critical) ? "critical" : ""),
                    false);
        }
        table(flow, PackLists.fasteners(plan), List.of(104.0, 30.0, 30.0));
        table(flow, PackLists.tools(plan), List.of(70.0, 104.0));
        if (!PackLists.racks(crew).rows().isEmpty()) {
            table(flow, PackLists.racks(crew), List.of(34.0, 36.0, 104.0));
        }
        if (!PackLists.cables(scene, plan).rows().isEmpty()) {
            table(flow, PackLists.cables(scene, plan), List.of(12.0, 38.0, 11.0, 42.0, 42.0, 10.0, 19.0));
        }
        flow.heading("When all is in");
        for (String line : PackWords.AFTER) {
            flow.paragraph(line);
        }
        flow.heading("What is not looked at");
        flow.paragraph(
                "Diameter and depth of drilled holes: as the insert or screw of the backing takes the thread; length of bolts: what is clamped, the washer and at least one diameter of thread in steel, two in aluminium (common"
                        + " practice); temporary props; the wriggling round of units that need more room than a full turn about their"
                        + " middle, or a tilt about their lower edge, is given; leaves of doors that open inward, which are taken to be"
                        + " off.");
        return flow.pages();
    }

    private void table(Flow flow, Table table, List<Double> widths) {
        if (table.rows().size() <= FEW) {
            flow.need(14 + 5.5 * table.rows().size());
        }
        flow.heading(table.name());
        List<Column> columns = new ArrayList<>();
        for (int i = 0; i < widths.size(); i++) {
            columns.add(new Column(
                    table.columns().get(i),
                    "",
                    widths.get(i),
                    NUMBERS.contains(table.columns().get(i))));
        }
        Columns shown = new Columns(typeface, columns);
        shown.head(flow);
        for (List<?> row : table.rows()) {
            shown.row(
                    flow,
                    row.stream()
                            .map(cell -> cell == null ? "" : cell.toString())
                            .toList(),
                    false);
        }
    }

    /** Labels to cut out: one a unit, and one for the holes of each unit. */
    public List<Drawing> labels() {
        List<Drawing> sheets = new ArrayList<>();
        List<Shape> shapes = new ArrayList<>();
        int at = 0;
        int across = 3;
        int perSheet = across * 7;
        for (BoltDownStep step : plan.steps()) {
            for (List<String> label : labels(step)) {
                if (at == perSheet) {
                    sheets.add(sheet(shapes, sheets.size()));
                    shapes = new ArrayList<>();
                    at = 0;
                }
                double x = 15 + at % across * (LABEL_WIDTH + 3);
                double y = 22 + at / across * (LABEL_HEIGHT + 2);
                shapes.addAll(label(label, x, y));
                at++;
            }
        }
        sheets.add(sheet(shapes, sheets.size()));
        return sheets;
    }

    private Drawing sheet(List<Shape> labels, int number) {
        List<Shape> shapes = new ArrayList<>(labels);
        shapes.add(Lettering.muted(
                head.name() + ", labels, sheet " + (number + 1) + ": cut along the lines", new Spot(15, 15), 2.2));
        return new Drawing("Labels", SheetSize.A4.width(), SheetSize.A4.height(), shapes);
    }

    private static List<List<String>> labels(BoltDownStep step) {
        List<List<String>> labels = new ArrayList<>();
        labels.add(List.of(
                step.number() + "  " + step.unit().name(),
                step.datums().stream().map(Datum::text).collect(Collectors.joining(", "))));
        if (!step.boltings().isEmpty()) {
            labels.add(List.of(
                    step.number() + "  holes",
                    step.boltings().stream()
                            .flatMap(one -> one.places().stream())
                            .map(place -> place.number() + " " + place.into())
                            .collect(Collectors.joining("; "))));
        }
        return labels;
    }

    private List<Shape> label(List<String> texts, double x, double y) {
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Polygon.of(
                new Bounds(x, y, x + LABEL_WIDTH, y + LABEL_HEIGHT), null, Pen.of(0.25, Role.TEXT.colour())));
        String name =
                new Wrap(typeface, Typeface.sizeOf(2.8), Weight.SEMIBOLD).shortened(texts.get(0), LABEL_WIDTH - 5);
        shapes.add(Lettering.bold(name, new Spot(x + 2.5, y + 5.5), 2.8));
        double line = y + 9;
        Wrap wrap = new Wrap(typeface, Typeface.sizeOf(LABEL_TEXT), Weight.REGULAR);
        List<String> lines = wrap.lines(texts.get(1), LABEL_WIDTH - 5);
        if (lines.size() > LABEL_LINES) {
            lines = wrap.lines("Too many to stand here: see the card of this step.", LABEL_WIDTH - 5);
        }
        for (String text : lines) {
            shapes.add(Lettering.of(text, new Spot(x + 2.5, line + 0.6), LABEL_TEXT));
            line += 3;
        }
        return shapes;
    }
}

package org.shelterwright.app.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.elevation.Codes;
import org.shelterwright.app.elevation.PlaceSketch;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.sheet.Columns;
import org.shelterwright.app.sheet.Columns.Column;
import org.shelterwright.app.sheet.Flow;
import org.shelterwright.app.sheet.SheetSize;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.catalog.piece.DangerousGoods;
import org.shelterwright.catalog.piece.Urgency;
import org.shelterwright.layouts.brief.PieceSpec;
import org.shelterwright.layouts.brief.Task;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.inside.Held;
import org.shelterwright.layouts.inside.InPlace;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.stowage.FilledPlace;
import org.shelterwright.layouts.scene.PlacedUnit;

/** The stowage list: by place with sketches, and by task in the order of use. */
final class StowagePages {
    private static final List<Column> BY_PLACE = List.of(
            new Column("Code", "", 16, false),
            new Column("Piece", "", 66, false),
            new Column("Mass", "kg", 16, true),
            new Column("", "", 4, false),
            new Column("At hand", "", 22, false),
            new Column("Notes", "", 54, false),
            new Column("Task", "", 44, false),
            new Column("Owner", "", 30, false));
    private static final List<Column> BY_TASK = List.of(
            new Column("Order", "", 14, true),
            new Column("", "", 4, false),
            new Column("Code", "", 16, false),
            new Column("Piece", "", 66, false),
            new Column("Rides in", "", 80, false),
            new Column("On station", "", 42, false),
            new Column("Owner", "", 30, false));
    private static final double SKETCH = 40;

    private final Typeface typeface;
    private final Issue issue;
    private final Codes codes;
    private final Flow flow;

    StowagePages(Typeface typeface, Issue issue) {
        this.typeface = typeface;
        this.issue = issue;
        this.codes = new Codes(issue.scene());
        this.flow = new Flow(
                typeface,
                SheetSize.A4_LYING,
                issue.name() + ", stowage list",
                "layout " + issue.scene().brief().id(),
                issue.foot());
    }

    List<Drawing> pages() {
        for (FilledPlace place : FilledPlace.of(issue.scene())) {
            place(place);
        }
        open();
        for (Task task : issue.scene().brief().listed().tasks()) {
            task(task);
        }
        flow.heading("Limits of stowage");
        LimitTable.set(flow, typeface, issue, Subject.STOWAGE);
        Closing.set(
                flow,
                issue,
                Subject.STOWAGE,
                "Dangerous goods are stowed and carried under the rules of the place, by people trained in them.");
        return flow.pages();
    }

    private void place(FilledPlace place) {
        flow.need(SKETCH + 24);
        flow.heading(codes.place(place.unit().id(), place.stowage().name()) + "  "
                + place.unit().name() + ", " + place.stowage().name());
        String lock = place.stowage().lock();
        double kg = place.pieces().stream()
                .map(piece -> piece.piece().mass().massKg())
                .mapToDouble(one -> one == null ? 0 : one)
                .sum();
        flow.paragraph(
                Numerals.of(kg, 1) + " of " + Numerals.short3(place.stowage().ratingKg()) + " kg; closed by: "
                        + (lock == null ? "not stated" : lock) + ".");
        flow.add(
                SKETCH,
                top -> new PlaceSketch(codes, place)
                        .shapes(new Bounds(flow.left() + 10, top + 1, flow.left() + 170, top + SKETCH)));
        Columns columns = new Columns(typeface, BY_PLACE);
        columns.head(flow);
        for (InPlace piece : place.pieces()) {
            Double own = piece.piece().mass().massKg();
            String owner = piece.spec().owner();
            columns.row(
                    flow,
                    List.of(
                            codes.piece(piece.id()),
                            piece.name(),
                            own == null ? "?" : Numerals.of(own, 1),
                            "",
                            words(piece.urgency()),
                            notes(piece),
                            taskName(piece.spec()),
                            owner == null ? "" : owner),
                    false);
        }
    }

    private void open() {
        List<PieceSpec> open = issue.scene().interiors().looseToPlace();
        if (!open.isEmpty()) {
            flow.heading("Without a place");
            open.forEach(piece -> flow.pair(codes.piece(piece.id()), piece.name()));
        }
    }

    private void task(Task task) {
        List<Held> held = new ArrayList<>();
        for (UnitSpec unit : issue.scene().brief().units()) {
            issue.scene().interiors().held(unit.id()).stream()
                    .filter(one -> task.id().equals(one.spec().task()))
                    .forEach(held::add);
        }
        if (held.isEmpty()) {
            return;
        }
        held.sort(Comparator.comparingInt((Held one) -> order(one)).thenComparing(one -> codes.piece(one.id())));
        flow.need(30);
        flow.heading("Task: " + task.name() + where(task));
        Columns columns = new Columns(typeface, BY_TASK);
        columns.head(flow);
        for (Held one : held) {
            Integer order = one.spec().order();
            String owner = one.spec().owner();
            String unit = issue.scene()
                    .unit(one.place().unit())
                    .map(PlacedUnit::name)
                    .orElse(one.place().unit());
            columns.row(
                    flow,
                    List.of(
                            order == null ? "" : order.toString(),
                            "",
                            codes.piece(one.id()),
                            one.name(),
                            codes.where(one) + "  " + unit + ", " + one.place().place(),
                            one.spec().takenOut() ? "taken out" : "stays in its place",
                            owner == null ? "" : owner),
                    false);
        }
    }

    private static int order(Held held) {
        Integer order = held.spec().order();
        return order == null ? Integer.MAX_VALUE : order;
    }

    private String where(Task task) {
        String unit = task.unit();
        if (unit != null) {
            return ", at " + issue.scene().unit(unit).map(PlacedUnit::name).orElse(unit);
        }
        return task.opening() == null ? ", outside" : ", outside, by the " + task.opening();
    }

    private String taskName(PieceSpec spec) {
        String task = spec.task();
        return task == null
                ? ""
                : issue.scene().brief().listed().task(task).map(Task::name).orElse(task);
    }

    private static String notes(InPlace piece) {
        List<String> notes = new ArrayList<>();
        if (piece.loose().fragile()) {
            notes.add("fragile");
        }
        if (piece.loose().upright()) {
            notes.add("upright");
        }
        DangerousGoods goods = piece.loose().goods();
        if (goods != null) {
            notes.add("class " + goods.hazardClass() + (goods.number() == null ? "" : ", " + goods.number()));
        }
        return String.join("; ", notes);
    }

    static String words(Urgency urgency) {
        return urgency.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}

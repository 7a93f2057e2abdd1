package org.shelterwright.app.desk.space.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shelterwright.app.desk.hand.Catch;
import org.shelterwright.app.desk.hand.Clearance;
import org.shelterwright.app.desk.paint.ScreenCanvas;
import org.shelterwright.app.desk.space.measure.Distance;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Circle;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.scene.PlacedUnit;

/** Draws what lies over the space, in one order: names, outlines, overlays, findings, distances, legend, tags. */
public final class Marks {
    private static final double FARTHEST_TAG = 160;
    private static final double TOP_BAND = 56;
    private static final Pen DISTANCE = Pen.of(0.35, Role.ACCENT.colour());
    private static final Pen CASING = Pen.of(1, Role.PANEL.colour());

    private final Glass glass;
    private final Over over;
    private final Typeface typeface;
    private final List<Shape> shapes = new ArrayList<>();
    private final List<Tag> tags = new ArrayList<>();
    private final List<Bounds> covered = new ArrayList<>();

    private Marks(Glass glass, Over over, Typeface typeface) {
        this.glass = glass;
        this.over = over;
        this.typeface = typeface;
    }

    public static List<Shape> of(Glass glass, Over over, Typeface typeface) {
        Marks marks = new Marks(glass, over, typeface);
        marks.draw();
        return marks.shapes;
    }

    private void draw() {
        OverlayMarks overlays = new OverlayMarks(glass, over, typeface);
        Legend legend = new Legend(glass, typeface, over.overlays());
        if (legend.shown()) {
            covered.add(legend.bounds());
        }
        covered.addAll(overlays.taken());
        Names names = new Names(glass, typeface, over.picker(), covered);
        names.name(
                over.standing().scene().units(),
                unit -> over.picker().shown().test(unit) && over.solid().test(unit));
        shapes.addAll(names.shapes());
        outlines();
        shapes.addAll(overlays.shapes());
        FindingMarks findings = new FindingMarks(
                glass,
                over.standing().ledger().rows(),
                row -> over.standing().tryingOut() && row.place() != null,
                this::place);
        findings.mark(over.finding(), over.selected(), typeface);
        shapes.addAll(findings.shapes());
        shapes.addAll(AxesCorner.shapes(glass));
        over.clearances().forEach(this::clearance);
        over.catches().forEach(this::caught);
        Tag finding = findings.tag();
        if (finding != null) {
            tags.add(finding);
        }
        over.distances().forEach(this::distance);
        begun();
        if (legend.shown()) {
            shapes.addAll(legend.shapes());
        }
        place(names.taken(), findings.signs());
        if (over.frame() != null) {
            shapes.add(SelectionMark.frame(over.frame()));
        }
        naming();
    }

    private Optional<Box> place(Row row) {
        return row.place() != null
                ? Optional.of(row.place())
                : row.units().stream()
                        .flatMap(id -> over.standing().scene().unit(id).stream())
                        .map(unit -> unit.outline(over.picker().situation()))
                        .findFirst();
    }

    private void outlines() {
        for (PlacedUnit unit : over.standing().scene().units()) {
            if (over.picker().shown().test(unit.id())) {
                List<Box> solids = unit.solids(over.picker().situation());
                if (over.selected().contains(unit.id())) {
                    shapes.addAll(SelectionMark.selected(glass, solids));
                } else if (unit.id().equals(over.hovered())) {
                    shapes.addAll(SelectionMark.hovered(glass, solids));
                }
            }
        }
    }

    private void naming() {
        Spot pointer = over.naming();
        if (pointer != null && over.hovered() != null) {
            over.standing()
                    .scene()
                    .unit(over.hovered())
                    .ifPresent(unit -> shapes.addAll(SelectionMark.name(glass, typeface, unit.name(), pointer)));
        }
    }

    private void clearance(Clearance clearance) {
        Spot from = glass.spot(clearance.from());
        Spot to = glass.spot(clearance.to());
        shapes.add(Lines.of(CASING, from, to));
        shapes.add(Lines.of(DISTANCE, from, to));
        tags.add(Tag.doing(to, clearance.words()));
    }

    private void caught(Catch caught) {
        shapes.addAll(CatchLook.shapes(glass, caught));
        tags.add(Tag.caught(glass.spot(caught.place()), caught.words()));
    }

    private void distance(Distance distance) {
        Spot from = glass.spot(distance.from());
        Spot to = glass.spot(distance.to());
        shapes.add(Lines.of(CASING, from, to));
        shapes.add(Lines.of(DISTANCE, from, to));
        shapes.add(new Circle(from, 0.7, Role.ACCENT.colour(), null));
        shapes.add(new Circle(to, 0.7, Role.ACCENT.colour(), null));
        tags.add(Tag.doing(from.towards(to, 0.5), distance.words()));
    }

    private void begun() {
        if (over.begun() != null) {
            Spot at = glass.spot(over.begun().at());
            shapes.add(new Circle(at, 1.1, Role.RAISED.colour(), DISTANCE));
            shapes.add(new Circle(at, 0.5, Role.ACCENT.colour(), null));
        }
    }

    private void place(List<Bounds> names, List<Bounds> signs) {
        if (tags.isEmpty()) {
            return;
        }
        TagPlacing placing = new TagPlacing(glass.bounds().grown(-1.5), this::busy, FARTHEST_TAG / ScreenCanvas.PIXELS);
        names.forEach(placing::keepFree);
        signs.forEach(placing::keepFree);
        covered.forEach(placing::keepFree);
        Bounds pane = glass.bounds();
        placing.keepFree(new Bounds(0, 0, pane.x1(), glass.sized(TOP_BAND)));
        placing.keepFree(AxesCorner.room(glass));
        over.covered().forEach(placing::keepFree);
        new TagLook(glass, typeface).draw(tags, placing, shapes);
    }

    /** Share of a rectangle that lies on units. */
    private double busy(Bounds b) {
        int on = 0;
        int count = 0;
        for (double x = b.x0(); x <= b.x1(); x += b.width() / 3) {
            for (double y = b.y0(); y <= b.y1(); y += b.height() / 2) {
                count++;
                boolean hit = over.picker()
                        .unit(glass.eye().ray(x * ScreenCanvas.PIXELS, y * ScreenCanvas.PIXELS))
                        .isPresent();
                on += hit ? 1 : 0;
            }
        }
        return (double) on / count;
    }
}

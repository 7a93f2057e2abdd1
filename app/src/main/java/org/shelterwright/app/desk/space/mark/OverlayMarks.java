package org.shelterwright.app.desk.space.mark;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Colour;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.look.VerdictSign;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.view.CentreMark;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rules;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.statement.MassStatement;

/** The overlays that are drawn: centre of mass in its window, loads on the floor, ways and their narrowest places. */
final class OverlayMarks {
    private static final double SIZE = 11.5;

    private final Glass glass;
    private final Over over;
    private final Typeface typeface;
    private final Scene scene;
    private final List<Shape> shapes = new ArrayList<>();

    OverlayMarks(Glass glass, Over over, Typeface typeface) {
        this.glass = glass;
        this.over = over;
        this.typeface = typeface;
        this.scene = over.standing().scene();
        if (over.overlays().contains(Overlay.FLOOR_LOAD)) {
            floorLoad();
        }
        if (over.overlays().contains(Overlay.WALKWAYS)) {
            walkways();
        }
        if (over.overlays().contains(Overlay.CENTRE_OF_MASS)) {
            centre();
        }
    }

    List<Shape> shapes() {
        return shapes;
    }

    /** The mark at its true height, and the window on the floor as a fence where the brief sets all its sides. */
    private void centre() {
        Rules rules = scene.rules();
        OptionalDouble low = rules.value(Figure.CENTRE_X_LOW);
        OptionalDouble high = rules.value(Figure.CENTRE_X_HIGH);
        OptionalDouble off = rules.value(Figure.CENTRE_Y_OFF);
        if (low.isPresent() && high.isPresent() && off.isPresent()) {
            double middle = scene.body().inside().y() / 2e3;
            Box window = new Box(
                    um(low.getAsDouble()),
                    um(middle - off.getAsDouble()),
                    0,
                    um(high.getAsDouble()),
                    um(middle + off.getAsDouble()),
                    0);
            shapes.addAll(Fence.around(floor(window)));
        }
        Situation situation = over.picker().situation();
        scene.derived(MassStatement.class, MassStatement::of)
                .filledBody(situation)
                .flatMap(total -> total.centre())
                .ifPresent(at -> shapes.addAll(new CentreMark(at, "centre of mass").shapes(glass, typeface)));
    }

    /** The floor by its rows of the ledger: the more of the capacity is used, the darker; the worst row of a place counts. */
    private void floorLoad() {
        Map<Box, Row> worst = new HashMap<>();
        for (Row row : over.standing().ledger().rows()) {
            Box place = row.place();
            if (row.subject() == Subject.FLOOR && place != null && place.x0() < place.x1() && place.y0() < place.y1()) {
                worst.merge(place, row, (a, b) -> use(a) >= use(b) ? a : b);
            }
        }
        worst.forEach((place, row) -> {
            List<Spot> ring = floor(place);
            boolean trouble = row.verdict() == Verdict.BROKEN || row.verdict() == Verdict.CLOSE;
            Colour colour = trouble ? VerdictSign.colour(row.verdict()) : Role.BAR.colour();
            double share = Math.min(1, Math.max(0, use(row)));
            shapes.add(new Polygon(ring, colour.with(0.1 + 0.5 * share), Pen.of(0.3, colour)));
            if (row.use() != null) {
                text(Numerals.of(row.use(), 2), Bounds.of(ring).centre(), Role.TEXT.colour());
            }
        });
    }

    /** The narrowest place of each way, with what is there and what is needed. */
    private void walkways() {
        for (Row row : over.standing().ledger().rows()) {
            Box place = row.place();
            if (row.limit().equals("access.walkway") && place != null && row.capacity() != null) {
                Colour colour = row.verdict() == Verdict.MET ? Role.ZONE.colour() : VerdictSign.colour(row.verdict());
                List<Spot> ring = floor(place);
                shapes.add(new Polygon(ring, colour.with(0.12), Pen.of(0.35, colour)));
                text(Numerals.of(row.capacity(), 0), Bounds.of(ring).centre(), colour);
            }
        }
    }

    private void text(String text, Spot at, Colour colour) {
        double size = glass.sized(SIZE);
        shapes.add(Polygon.of(
                Bounds.around(at, typeface.width(text, size, Weight.SEMIBOLD) + 1.2, size * 1.15),
                Role.PANEL.colour().with(0.9),
                null));
        shapes.add(new Label(
                text, at.plus(0, size * Typeface.CAPITAL / 2), size, Weight.SEMIBOLD, Align.MIDDLE, 0, colour));
    }

    private List<Spot> floor(Box box) {
        return glass.spots(List.of(
                new Point(box.x0(), box.y0(), 0),
                new Point(box.x1(), box.y0(), 0),
                new Point(box.x1(), box.y1(), 0),
                new Point(box.x0(), box.y1(), 0)));
    }

    private static double use(Row row) {
        Double use = row.use();
        return use == null ? 0 : use;
    }

    private static int um(double mm) {
        return (int) Math.round(mm * 1000);
    }
}

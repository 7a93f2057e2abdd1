package org.shelterwright.app.desk.space.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.shelterwright.app.desk.paint.ScreenCanvas;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Colour;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.app.view.CentreMark;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rules;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.statement.MassStatement;

/** The overlays that are drawn: centre of mass in its window, loads on the floor, ways and their narrowest places. */
final class OverlayMarks {
    private static final double SIZE = 11.5;
    private static final String CENTRE = "centre of mass";

    private final Glass glass;
    private final Over over;
    private final Typeface typeface;
    private final Scene scene;
    private final List<Shape> shapes = new ArrayList<>();
    private final List<Bounds> taken = new ArrayList<>();

    OverlayMarks(Glass glass, Over over, Typeface typeface) {
        this.glass = glass;
        this.over = over;
        this.typeface = typeface;
        this.scene = over.standing().scene();
        figures();
        if (over.overlays().contains(Overlay.CENTRE_OF_MASS)) {
            centre();
        }
    }

    List<Shape> shapes() {
        return shapes;
    }

    /** What texts and marks cover. */
    List<Bounds> taken() {
        return taken;
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
                .ifPresent(this::mark);
    }

    private void mark(Point at) {
        shapes.addAll(new CentreMark(at, CENTRE).shapes(glass, typeface));
        Spot spot = glass.spot(at);
        double label = typeface.width(CENTRE, 2.9, Weight.MEDIUM);
        taken.add(new Bounds(spot.x() - 4, spot.y() - 4, spot.x() + 8 + label, spot.y() + 4));
    }

    /** Figures of the patches on the floor, where the floor is seen. */
    private void figures() {
        FloorPatches patches = FloorPatches.of(over.standing().ledger(), over.overlays());
        for (FloorPatches.Figure figure : patches.figures()) {
            Spot at = glass.spot(figure.at());
            boolean seen = over.picker()
                    .unit(glass.eye().ray(at.x() * ScreenCanvas.PIXELS, at.y() * ScreenCanvas.PIXELS))
                    .isEmpty();
            if (seen) {
                text(figure.text(), at, figure.colour());
            }
        }
    }

    private void text(String text, Spot at, Colour colour) {
        double size = glass.sized(SIZE);
        Bounds ground = Bounds.around(at, typeface.width(text, size, Weight.SEMIBOLD) + 1.2, size * 1.15);
        taken.add(ground);
        shapes.add(Polygon.of(ground, Role.PANEL.colour().with(0.9), null));
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

    private static int um(double mm) {
        return (int) Math.round(mm * 1000);
    }
}

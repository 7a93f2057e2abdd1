package org.shelterwright.app.view;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.drawing.Circle;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.catalog.space.Point;

/** The small figure with three legs that names the directions of a picture. */
public final class AxesFigure {

    private static final double LEG = 9;
    private static final Pen PEN = Pen.of(0.4, Role.TEXT.colour());

    private final Axonometry view;
    private final double size;

    public AxesFigure(Axonometry view) {
        this(view, 1);
    }

    /** @param size of the words, against the usual */
    public AxesFigure(Axonometry view, double size) {
        this.view = view;
        this.size = size;
    }

    public List<Shape> shapes(Spot origin) {
        List<Shape> shapes = new ArrayList<>();
        leg(shapes, origin, Point.ofMm(1000, 0, 0), "forward");
        leg(shapes, origin, Point.ofMm(0, 1000, 0), "left");
        leg(shapes, origin, Point.ofMm(0, 0, 1000), "up");
        shapes.add(new Circle(origin, 0.85, Role.PANEL.colour(), PEN));
        return shapes;
    }

    private void leg(List<Shape> shapes, Spot origin, Point direction, String name) {
        double dx = view.across(direction) * 1e-6 * LEG;
        double dy = -view.up(direction) * 1e-6 * LEG;
        if (Math.hypot(dx, dy) < 1) {
            return;
        }
        Spot end = origin.plus(dx, dy);
        shapes.add(Lines.of(PEN, origin, end));
        shapes.add(new Circle(end, 0.65, Role.TEXT.colour(), null));
        Align align = Math.abs(dx) < 1 ? Align.MIDDLE : dx > 0 ? Align.START : Align.END;
        double side = Math.abs(dx) < 1 ? 0 : Math.signum(dx) * 1.6;
        shapes.add(new Label(
                name,
                end.plus(side, Math.abs(dx) < 1 ? -1.6 : dy > 0 ? 1.6 : 0.6),
                2.9 * size,
                Weight.REGULAR,
                align,
                0,
                Role.TEXT.colour()));
    }
}

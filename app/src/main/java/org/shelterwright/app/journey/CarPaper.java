package org.shelterwright.app.journey;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Circle;
import org.shelterwright.app.drawing.Colour;
import org.shelterwright.app.drawing.LineType;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.catalog.space.Lengths;

/** Pens, tints and signs that the views of a loaded car share. */
final class CarPaper {
    static final Pen SILHOUETTE = Pen.of(0.35, Role.EDGE.colour());
    static final Pen EDGE = Pen.of(0.18, Role.EDGE.colour());
    static final Pen FINE = Pen.of(0.13, Role.LINES.colour());
    static final Pen LASHING = Pen.of(0.35, Role.TEXT.colour()).with(LineType.DASHED);
    static final Pen CENTROID = Pen.of(0.18, Role.TEXT.colour()).with(LineType.LONG_DASH_DOT);
    static final Pen THROWN = Pen.of(0.25, Role.ACCENT.colour()).with(LineType.DASHED);
    static final double SMALL = 1.8;

    private static final Pen HALO = Pen.of(0.9, Role.PANEL.colour());
    private static final Pen FENCE = Pen.of(0.45, Role.FENCE.colour());
    private static final Pen TICK = Pen.of(0.18, Role.FENCE.colour());

    private CarPaper() {}

    static double m(int micrometres) {
        return Lengths.metres(micrometres);
    }

    /** A lashing on a light ground of its own. */
    static List<Shape> lashing(Spot from, Spot to) {
        return List.of(Lines.of(HALO, from, to), Lines.of(LASHING, from, to));
    }

    /** A limit that may not be crossed: a line with short ticks on the forbidden side, to the left of its way. */
    static List<Shape> fence(List<Spot> corners) {
        List<List<Spot>> ticks = new ArrayList<>();
        for (int i = 0; i + 1 < corners.size(); i++) {
            Spot a = corners.get(i);
            Spot b = corners.get(i + 1);
            double length = a.distance(b);
            if (length < 1e-9) {
                continue;
            }
            double nx = (b.y() - a.y()) / length;
            double ny = -(b.x() - a.x()) / length;
            double tx = (b.x() - a.x()) / length;
            double ty = (b.y() - a.y()) / length;
            for (double at = 0.9; at < length; at += 1.8) {
                Spot on = a.towards(b, at / length);
                ticks.add(List.of(on, on.plus(1.0 * (nx + tx * 0.8), 1.0 * (ny + ty * 0.8))));
            }
        }
        return List.of(new Lines(List.of(corners), FENCE), new Lines(ticks, TICK));
    }

    /** The centre of mass: a quartered ring, small. */
    static List<Shape> centre(Spot at) {
        Pen pen = Pen.of(0.25, Role.TEXT.colour());
        return List.of(
                new Circle(at, 1.3, Role.RAISED.colour(), pen),
                Lines.of(pen, at.plus(-2, 0), at.plus(2, 0)),
                Lines.of(pen, at.plus(0, -2), at.plus(0, 2)),
                new Circle(at, 0.35, Role.TEXT.colour(), null));
    }

    static Colour ground() {
        return Role.VIEW.colour();
    }

    static Bounds box(double x0, double y0, double x1, double y1) {
        return new Bounds(Math.min(x0, x1), Math.min(y0, y1), Math.max(x0, x1), Math.max(y0, y1));
    }
}

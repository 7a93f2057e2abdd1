package org.shelterwright.app.arrangement;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.sheet.Lettering;
import org.shelterwright.app.type.Typeface;

/**
 * The marks of a cutting plane and of a view by reference arrow: thick ends with arrows in the direction of sight, and
 * capital letters (after ISO 128-3, from memory).
 */
final class CuttingPlane {

    private static final Pen THICK = Pen.of(0.7, Role.TEXT.colour());
    private static final Pen ARROW = Pen.of(0.35, Role.TEXT.colour());
    private static final double END = 5;
    private static final double SHAFT = 5;

    private final Typeface typeface;
    private final FreeSpace space;

    CuttingPlane(Typeface typeface, FreeSpace space) {
        this.typeface = typeface;
        this.space = space;
    }

    /** The plane A–A upright at x, beyond the plan from top to bottom, seen to the right. */
    List<Shape> shapes(double x, double top, double bottom) {
        List<Shape> shapes = new ArrayList<>();
        end(shapes, x, top - 0.6, -1);
        end(shapes, x, bottom + 0.6, 1);
        return shapes;
    }

    private void end(List<Shape> shapes, double x, double y, int out) {
        double far = y + out * END;
        shapes.add(Lines.of(THICK, new Spot(x, y), new Spot(x, far)));
        arrow(shapes, new Spot(x, far), new Spot(x + SHAFT, far));
        Label near = Lettering.bold("A", new Spot(x - 1.6, far + 1.2), 2.5).with(Align.END);
        Label beyond = Lettering.bold("A", new Spot(x + SHAFT + 1.2, far + 1.2), 2.5);
        Label letter = space.free(typeface.bounds(near)) ? near : beyond;
        shapes.add(letter);
        space.take(typeface.bounds(letter));
    }

    /** The arrow of view B, pointing down to a place. */
    static List<Shape> arrowB(Spot tip) {
        List<Shape> shapes = new ArrayList<>();
        arrow(shapes, tip.plus(0, -9), tip);
        shapes.add(Lettering.bold("B", tip.plus(1.8, -5.5), 2.5));
        return shapes;
    }

    private static void arrow(List<Shape> shapes, Spot from, Spot tip) {
        double length = from.distance(tip);
        double ux = (tip.x() - from.x()) / length;
        double uy = (tip.y() - from.y()) / length;
        shapes.add(Lines.of(ARROW, from, tip));
        shapes.add(new Polygon(
                List.of(
                        tip,
                        tip.plus(-3 * ux - 0.8 * uy, -3 * uy + 0.8 * ux),
                        tip.plus(-3 * ux + 0.8 * uy, -3 * uy - 0.8 * ux)),
                Role.TEXT.colour(),
                null));
    }
}

package org.shelterwright.app.arrangement;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.sheet.Lettering;

/** A bar of 100 mm by which a print is checked for true scale. */
final class ControlBar {

    static final double LENGTH = 100;
    private static final double HEIGHT = 2.4;
    private static final double FIELD = 10;

    private ControlBar() {}

    /** The bar with its upper left corner at a place. */
    static List<Shape> shapes(Spot corner) {
        List<Shape> shapes = new ArrayList<>();
        Pen line = Pen.of(0.18, Role.TEXT.colour());
        for (int i = 0; i < LENGTH / FIELD; i++) {
            double x = corner.x() + i * FIELD;
            Bounds field = new Bounds(x, corner.y(), x + FIELD, corner.y() + HEIGHT);
            shapes.add(Polygon.of(field, i % 2 == 0 ? Role.TEXT.colour() : Role.RAISED.colour(), line));
        }
        shapes.add(Lettering.muted(
                "100 mm on paper at true scale", new Spot(corner.x() + LENGTH + 2.5, corner.y() + 2.2), 1.8));
        return shapes;
    }
}

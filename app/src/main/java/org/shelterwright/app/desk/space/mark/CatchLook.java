package org.shelterwright.app.desk.space.mark;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.desk.hand.Catch;
import org.shelterwright.app.drawing.Circle;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.catalog.space.Box;

/** What caught a drag: faces that touch, a diamond at the place, a cross on the grid. */
final class CatchLook {
    private static final Pen LINE = Pen.of(0.35, Role.ACCENT.colour());

    private CatchLook() {}

    static List<Shape> shapes(Glass glass, Catch caught) {
        List<Shape> shapes = new ArrayList<>();
        for (Box face : caught.faces()) {
            shapes.add(
                    new Polygon(glass.hull(List.of(face)), Role.ACCENT.colour().with(0.1), LINE));
        }
        Spot at = glass.spot(caught.place());
        double r = glass.sized(7);
        if (caught.kind() == Catch.Kind.GRID) {
            shapes.add(Lines.of(LINE, at.plus(-r, 0), at.plus(r, 0)));
            shapes.add(Lines.of(LINE, at.plus(0, -r), at.plus(0, r)));
        } else {
            shapes.add(new Polygon(
                    List.of(at.plus(-r, 0), at.plus(0, -r), at.plus(r, 0), at.plus(0, r)),
                    Role.RAISED.colour(),
                    Pen.of(0.45, Role.ACCENT.colour())));
            shapes.add(new Circle(at, 0.6, Role.ACCENT.colour(), null));
        }
        return shapes;
    }
}

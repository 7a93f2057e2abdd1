package org.shelterwright.app.arrangement;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.drawing.Circle;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.view.Weights;

/** The centre of mass in a flat view: a quartered ring on centroid lines. */
final class CentroidMark {

    /** Width and height (mm) that nothing else may cover. */
    static final double SIZE = 6;

    private static final double RADIUS = 2;
    private static final double REACH = 9;
    private static final int STEPS = 8;

    private CentroidMark() {}

    static List<Shape> shapes(Spot at) {
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Lines.of(Weights.ZONE_LINE, at.plus(-REACH, 0), at.plus(REACH, 0)));
        shapes.add(Lines.of(Weights.ZONE_LINE, at.plus(0, -REACH), at.plus(0, REACH)));
        shapes.add(new Circle(at, RADIUS, Role.RAISED.colour(), Weights.VISIBLE));
        shapes.add(quarter(at, 0));
        shapes.add(quarter(at, Math.PI));
        return shapes;
    }

    private static Shape quarter(Spot at, double from) {
        List<Spot> corners = new ArrayList<>();
        corners.add(at);
        for (int i = 0; i <= STEPS; i++) {
            double turn = from + Math.PI / 2 * i / STEPS;
            corners.add(at.plus(RADIUS * Math.cos(turn), -RADIUS * Math.sin(turn)));
        }
        return new Polygon(corners, Role.TEXT.colour(), null);
    }
}

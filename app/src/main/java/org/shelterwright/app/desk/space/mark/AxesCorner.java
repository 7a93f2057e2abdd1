package org.shelterwright.app.desk.space.mark;

import java.util.List;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.view.AxesFigure;

/** The axes in the lower left corner of a view, with room for their words. Their legs keep their length: larger text shall not cover the body. */
final class AxesCorner {
    private static final double LEGS = 36;
    private static final double WORDS = 48;
    private static final double FOOT = 30;
    private static final double LINE = 14;
    private static final double ROOM = 168;

    private AxesCorner() {}

    static List<Shape> shapes(Glass glass) {
        return new AxesFigure(glass.eye().axonometry(), glass.text()).shapes(origin(glass));
    }

    /** What is kept free for them. */
    static Bounds room(Glass glass) {
        return Bounds.around(origin(glass), glass.sized(ROOM), glass.sized(ROOM));
    }

    private static Spot origin(Glass glass) {
        double px = glass.sized(1) / glass.text();
        return new Spot(px * (LEGS + WORDS * glass.text()), glass.bounds().y1() - px * (FOOT + LINE * glass.text()));
    }
}

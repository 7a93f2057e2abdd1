package org.shelterwright.app.view;

import java.util.List;
import org.shelterwright.app.drawing.Circle;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Point;

/**
 * A centre of mass: a ring with a cross and a dot at its true height, and a plumb line to the floor.
 *
 * @param at in the frame of the body
 * @param name such as "centre of mass"
 */
public record CentreMark(Point at, String name) {

    private static final double RING = 2.75;
    private static final Pen PEN = Pen.of(0.4, Role.CENTRE_OF_MASS.colour());
    private static final Pen HALO = Pen.of(1.4, Role.PANEL.colour());

    /** The mark as it lies over a picture. */
    public List<Shape> shapes(Depiction projection, Typeface typeface) {
        Spot top = projection.spot(at);
        Spot foot = projection.spot(at.with(Axis.Z, 0));
        Label label = new Label(
                name, top.plus(RING + 3.2, 1), 2.9, Weight.MEDIUM, Align.START, 0, Role.CENTRE_OF_MASS.colour());
        return List.of(
                Lines.of(HALO, top, foot),
                Lines.of(PEN, top, foot),
                new Polygon(List.of(foot, foot.plus(-1.3, -2.4), foot.plus(1.3, -2.4)), Role.PANEL.colour(), PEN),
                new Circle(top, RING, Role.PANEL.colour(), PEN),
                Lines.of(PEN, top.plus(-RING - 1.4, 0), top.plus(RING + 1.4, 0)),
                Lines.of(PEN, top.plus(0, -RING - 1.4), top.plus(0, RING + 1.4)),
                new Circle(top, 0.7, Role.CENTRE_OF_MASS.colour(), null),
                Polygon.of(
                        typeface.bounds(label).grown(0.7), Role.PANEL.colour().with(0.92), null),
                label);
    }
}

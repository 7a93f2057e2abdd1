package org.shelterwright.app.desk.bolt;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Circle;
import org.shelterwright.app.drawing.Label;
import org.shelterwright.app.drawing.Label.Align;
import org.shelterwright.app.drawing.Label.Weight;
import org.shelterwright.app.drawing.LineType;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.boltdown.BoltDownStep;
import org.shelterwright.layouts.boltdown.Bolting;
import org.shelterwright.layouts.ledger.fit.MountFace;

/** The fixings of a unit seen square to what they go into, numbered in the order of tightening. */
final class BoltSketch {
    private static final double BOLT = 2.6;
    private static final double SIZE = 2.9;
    private static final Pen OUTLINE = Pen.of(0.4, Role.EDGE.colour());
    private static final Pen ORDER = Pen.of(0.25, Role.ACCENT.colour()).with(LineType.DASHED);
    private static final Pen RING = Pen.of(0.3, Role.TEXT.colour());

    private BoltSketch() {}

    /**
     * Draws the fixings.
     *
     * @param area to be filled (mm of the drawing)
     * @return nothing if the unit has no fixings
     */
    static List<Shape> shapes(BoltDownStep step, Bounds area) {
        List<Bolting.Place> places =
                step.boltings().stream().flatMap(one -> one.places().stream()).toList();
        if (places.isEmpty()) {
            return List.of();
        }
        Face face = MountFace.of(step.unit().placement().station());
        Box outline = step.unit().outline(Situation.ON_STATION);
        Axis across = face.axis() == Axis.X ? Axis.Y : Axis.X;
        Axis up = face.axis() == Axis.Z ? Axis.Y : Axis.Z;
        double wide = outline.extent(across) / 1e3;
        double high = outline.extent(up) / 1e3;
        double scale = Math.min((area.width() - 2 * BOLT) / wide, (area.height() - 2 * BOLT) / high);
        double x0 = area.centre().x() - wide * scale / 2;
        double y1 = area.centre().y() + high * scale / 2;
        List<Shape> shapes = new ArrayList<>();
        shapes.add(new Polygon(
                List.of(
                        new Spot(x0, y1),
                        new Spot(x0 + wide * scale, y1),
                        new Spot(x0 + wide * scale, y1 - high * scale),
                        new Spot(x0, y1 - high * scale)),
                Role.TRACK.colour(),
                OUTLINE));
        List<Spot> spots = places.stream()
                .sorted(Comparator.comparingInt(Bolting.Place::number))
                .map(place -> spot(place.at(), outline, across, up, scale, x0, y1))
                .toList();
        shapes.add(new Lines(List.of(spots), ORDER));
        for (int i = 0; i < spots.size(); i++) {
            shapes.add(new Circle(spots.get(i), BOLT, Role.RAISED.colour(), RING));
            shapes.add(new Label(
                    String.valueOf(i + 1),
                    spots.get(i).plus(0, SIZE * Typeface.CAPITAL / 2),
                    SIZE,
                    Weight.SEMIBOLD,
                    Align.MIDDLE,
                    0,
                    Role.TEXT.colour()));
        }
        return shapes;
    }

    private static Spot spot(Point at, Box outline, Axis across, Axis up, double scale, double x0, double y1) {
        return new Spot(
                x0 + (at.along(across) - outline.low(across)) / 1e3 * scale,
                y1 - (at.along(up) - outline.low(up)) / 1e3 * scale);
    }
}

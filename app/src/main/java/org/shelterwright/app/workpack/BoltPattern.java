package org.shelterwright.app.workpack;

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
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.boltdown.BoltDownStep;
import org.shelterwright.layouts.boltdown.Bolting;

/** The fixings of a step seen square to what they go into, with their order of tightening. Seen from above, or by who faces the wall. */
final class BoltPattern {
    private static final double RING = 2.4;
    private static final double LEAST_RING = 1.6;

    private BoltPattern() {}

    static List<Shape> shapes(BoltDownStep step, Bounds paper) {
        List<Bolting.Place> places = step.boltings().stream()
                .flatMap(one -> one.places().stream())
                .sorted(Comparator.comparingInt(Bolting.Place::number))
                .toList();
        List<Shape> shapes = new ArrayList<>();
        if (places.isEmpty()) {
            return shapes;
        }
        Box outline = StepScenes.outline(step);
        Face surface = surface(step);
        Bounds shown = shown(places, bounds(outline, surface), surface, paper);
        double inset = RING + 1;
        double across = (paper.width() - 2 * inset) / Math.max(1, shown.width());
        double down = (paper.height() - 2 * inset) / Math.max(1, shown.height());
        double least = Math.min(across, down);
        List<Spot> flats =
                places.stream().map(place -> flat(place.at(), surface)).toList();
        // Where even so two numbers would cover each other, the narrow way is drawn wider: the order is what counts.
        boolean wider = nearest(flats) * least < 2 * RING;
        Scales scale = wider ? new Scales(across, down) : new Scales(least, least);
        Spot middle = paper.centre();
        List<Spot> spots = new ArrayList<>();
        for (Bolting.Place place : places) {
            spots.add(on(place.at(), surface, shown, scale, middle));
        }
        Spot corner = on(outline.low(), surface, shown, scale, middle);
        Spot opposite = on(outline.high(), surface, shown, scale, middle);
        Bounds base = Bounds.of(List.of(corner, opposite));
        Bounds seen = new Bounds(
                Math.max(paper.x0(), base.x0()),
                Math.max(paper.y0(), base.y0()),
                Math.min(paper.x1(), base.x1()),
                Math.min(paper.y1(), base.y1()));
        shapes.add(Polygon.of(seen, Role.TRACK.colour(), Pen.of(0.35, Role.EDGE.colour())));
        for (int i = 0; i + 1 < spots.size(); i += 2) {
            shapes.add(
                    Lines.of(Pen.of(0.25, Role.ACCENT.colour()).with(LineType.DASHED), spots.get(i), spots.get(i + 1)));
        }
        double ring = Math.max(LEAST_RING, Math.min(RING, nearest(spots) / 2));
        for (int i = 0; i < spots.size(); i++) {
            shapes.add(new Circle(spots.get(i), ring, Role.RAISED.colour(), Pen.of(0.35, Role.TEXT.colour())));
            shapes.add(new Label(
                    Integer.toString(places.get(i).number()),
                    spots.get(i).plus(0, 1.1 * ring / RING),
                    3.2 * ring / RING,
                    Weight.SEMIBOLD,
                    Align.MIDDLE,
                    0,
                    Role.TEXT.colour()));
        }
        return shapes;
    }

    /** From where it is seen, in words. */
    static String seen(BoltDownStep step) {
        return surface(step).axis() == Axis.Z ? "seen from above, forward up" : "seen as you face the wall";
    }

    /** The outline of the unit; where the fixings stand so close that their rings would overlap, only what is about them. */
    private static Bounds shown(List<Bolting.Place> places, Bounds outline, Face surface, Bounds paper) {
        List<Spot> spots =
                places.stream().map(place -> flat(place.at(), surface)).toList();
        Bounds about = Bounds.of(spots);
        double inset = RING + 1;
        double scale = Math.min(
                (paper.width() - 2 * inset) / Math.max(1, outline.width()),
                (paper.height() - 2 * inset) / Math.max(1, outline.height()));
        return nearest(spots) * scale < 2 * RING ? about : outline;
    }

    private static double nearest(List<Spot> spots) {
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < spots.size(); i++) {
            for (int j = 0; j < i; j++) {
                nearest = Math.min(
                        nearest,
                        Math.hypot(
                                spots.get(i).x() - spots.get(j).x(),
                                spots.get(i).y() - spots.get(j).y()));
            }
        }
        return nearest;
    }

    private static Face surface(BoltDownStep step) {
        return step.unit().place(Situation.ON_STATION).surface() == Surface.WALL
                ? step.unit().pose(Situation.ON_STATION).apply(Face.REAR)
                : Face.BOTTOM;
    }

    private static Bounds bounds(Box o, Face surface) {
        Spot low = flat(o.low(), surface);
        Spot high = flat(o.high(), surface);
        return Bounds.of(List.of(low, high));
    }

    /** To the right and down, in millimetres: from above with forward up and left to the left; of a wall as one faces it. */
    private static Spot flat(Point p, Face surface) {
        double mm = 1e-3;
        return surface.axis() == Axis.Z
                ? new Spot(-p.y() * mm, -p.x() * mm)
                : surface.axis() == Axis.X
                        ? new Spot(-surface.sign() * p.y() * mm, -p.z() * mm)
                        : new Spot(surface.sign() * p.x() * mm, -p.z() * mm);
    }

    private record Scales(double across, double down) {}

    private static Spot on(Point at, Face surface, Bounds shown, Scales scale, Spot middle) {
        Spot flat = flat(at, surface);
        return new Spot(
                middle.x() + (flat.x() - shown.centre().x()) * scale.across(),
                middle.y() + (flat.y() - shown.centre().y()) * scale.down());
    }
}

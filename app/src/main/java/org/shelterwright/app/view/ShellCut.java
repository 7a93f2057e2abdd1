package org.shelterwright.app.view;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Hatch;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.space.Face;

/**
 * The cut through the walls, floor and roof of a body, hatched at 45°, open where its openings are; behind it the
 * openings of the far side.
 */
final class ShellCut {

    private static final double PITCH = 1.6;

    private final Body body;
    private final Sheeted sheeted;
    private final Bounds inside;
    private final Bounds outside;
    private final List<Shape> shapes = new ArrayList<>();

    ShellCut(Body body, Sheeted sheeted) {
        this.body = body;
        this.sheeted = sheeted;
        this.inside = sheeted.bounds(body.inside().box());
        this.outside = sheeted.bounds(body.outside());
    }

    List<Shape> shapes() {
        shapes.add(Polygon.of(inside, Role.RAISED.colour(), null));
        for (Opening opening : body.openings()) {
            if (opening.wall() == sheeted.aspect().near().opposite()) {
                shapes.add(Polygon.of(sheeted.bounds(opening.area()), null, Weights.THIN));
            }
        }
        for (Face face : Face.values()) {
            if (face.axis() != sheeted.aspect().near().axis()) {
                wall(face);
            }
        }
        if (sheeted.aspect() == Aspect.ABOVE) {
            body.openings().stream()
                    .filter(opening -> opening.kind() == Opening.Kind.DOOR
                            && opening.wall().upright())
                    .forEach(this::swing);
        }
        return shapes;
    }

    private void wall(Face face) {
        boolean upright = face.axis() == sheeted.aspect().across();
        Bounds strip = strip(face, upright);
        List<Bounds> gaps = body.openings().stream()
                .filter(opening -> opening.wall() == face)
                .map(opening -> gap(strip, sheeted.bounds(opening.area()), upright))
                .sorted(Comparator.comparingDouble(gap -> upright ? gap.y0() : gap.x0()))
                .toList();
        double from = upright ? strip.y0() : strip.x0();
        for (Bounds gap : gaps) {
            double to = upright ? gap.y0() : gap.x0();
            if (to > from) {
                piece(part(strip, from, to, upright), upright);
            }
            from = Math.max(from, upright ? gap.y1() : gap.x1());
            shapes.add(Polygon.of(gap, Role.RAISED.colour(), Weights.THIN));
        }
        piece(part(strip, from, upright ? strip.y1() : strip.x1(), upright), upright);
    }

    /** The wall between inside and outside; upright ones hold the corners. */
    private Bounds strip(Face face, boolean upright) {
        boolean low = sheeted.bounds(body.inside().box().face(face)).centre().x()
                        < inside.centre().x() - 1e-9
                || sheeted.bounds(body.inside().box().face(face)).centre().y()
                        < inside.centre().y() - 1e-9;
        if (upright) {
            return low
                    ? new Bounds(outside.x0(), outside.y0(), inside.x0(), outside.y1())
                    : new Bounds(inside.x1(), outside.y0(), outside.x1(), outside.y1());
        }
        return low
                ? new Bounds(inside.x0(), outside.y0(), inside.x1(), inside.y0())
                : new Bounds(inside.x0(), inside.y1(), inside.x1(), outside.y1());
    }

    private static Bounds gap(Bounds strip, Bounds opening, boolean upright) {
        return upright
                ? new Bounds(strip.x0(), opening.y0(), strip.x1(), opening.y1())
                : new Bounds(opening.x0(), strip.y0(), opening.x1(), strip.y1());
    }

    private static Bounds part(Bounds strip, double from, double to, boolean upright) {
        return upright ? new Bounds(strip.x0(), from, strip.x1(), to) : new Bounds(from, strip.y0(), to, strip.y1());
    }

    /** A hatched piece of wall, its long sides drawn thick, and its ends where they do not lie in a corner. */
    private void piece(Bounds b, boolean upright) {
        shapes.add(Polygon.of(b, Role.RAISED.colour(), null));
        shapes.add(Hatch.of(b, 45, PITCH, Weights.CUT_HATCH));
        List<List<Spot>> lines = new ArrayList<>();
        if (upright) {
            boolean left = b.x1() <= inside.x0() + 1e-9;
            lines.add(List.of(new Spot(left ? b.x0() : b.x1(), b.y0()), new Spot(left ? b.x0() : b.x1(), b.y1())));
            lines.add(List.of(
                    new Spot(left ? b.x1() : b.x0(), Math.max(b.y0(), inside.y0())),
                    new Spot(left ? b.x1() : b.x0(), Math.min(b.y1(), inside.y1()))));
            lines.add(List.of(new Spot(b.x0(), b.y0()), new Spot(b.x1(), b.y0())));
            lines.add(List.of(new Spot(b.x0(), b.y1()), new Spot(b.x1(), b.y1())));
        } else {
            lines.add(List.of(new Spot(b.x0(), b.y0()), new Spot(b.x1(), b.y0())));
            lines.add(List.of(new Spot(b.x0(), b.y1()), new Spot(b.x1(), b.y1())));
            for (double end : List.of(b.x0(), b.x1())) {
                if (end > inside.x0() + 1e-9 && end < inside.x1() - 1e-9) {
                    lines.add(List.of(new Spot(end, b.y0()), new Spot(end, b.y1())));
                }
            }
        }
        shapes.add(new Lines(lines, Weights.CUT));
    }

    private void swing(Opening door) {
        Optional<DoorSwing> leaf = DoorSwing.of(body, door);
        if (leaf.isPresent()) {
            List<Spot> arc = leaf.get().arc().stream().map(sheeted::spot).toList();
            shapes.add(new Lines(List.of(arc), Weights.ZONE_LINE));
            shapes.add(Lines.of(
                    Weights.VISIBLE,
                    sheeted.spot(leaf.get().hinge()),
                    sheeted.spot(leaf.get().end())));
        } else if (door.swing() != null) {
            shapes.add(Polygon.of(sheeted.bounds(door.swing()), null, Weights.ZONE_LINE));
        }
    }
}

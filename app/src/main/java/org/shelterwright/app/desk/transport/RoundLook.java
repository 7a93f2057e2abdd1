package org.shelterwright.app.desk.transport;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.look.Role;
import org.shelterwright.app.look.Tint;
import org.shelterwright.app.view.Facet;
import org.shelterwright.app.view.Trace;
import org.shelterwright.catalog.space.Point;

/** Wheels in the scene: drums of sixteen sides with a hub, as facets and lines. */
final class RoundLook {
    private static final int SIDES = 16;
    private static final Pen RIM = Pen.of(0.28, Role.EDGE.colour());
    private static final Pen HUB = Pen.of(0.2, Role.EDGE.colour().with(0.75));

    private final List<Facet> facets = new ArrayList<>();
    private final List<Trace> traces = new ArrayList<>();

    List<Facet> facets() {
        return facets;
    }

    List<Trace> traces() {
        return traces;
    }

    /**
     * Adds a wheel with its axle across.
     *
     * @param centre of the wheel (µm)
     * @param radius (µm)
     * @param width along its axle (µm)
     * @param placed brings a place of the wheel's frame into the scene
     */
    void wheel(Point centre, int radius, int width, Tint tyre, UnaryOperator<Point> placed) {
        List<Point> right = ring(centre, radius, -width / 2, placed);
        List<Point> left = ring(centre, radius, width / 2, placed);
        facets.add(new Facet(right, tyre.side()));
        facets.add(new Facet(left, tyre.side()));
        for (int i = 0; i < SIDES; i++) {
            int next = (i + 1) % SIDES;
            facets.add(new Facet(List.of(right.get(i), right.get(next), left.get(next), left.get(i)), tyre.end()));
        }
        for (int side : new int[] {-1, 1}) {
            List<Point> hub = ring(centre, radius * 11 / 20, side * (width / 2 + 2_000), placed);
            facets.add(new Facet(hub, Tint.STEEL.side()));
            traces.add(closed(hub, HUB));
            traces.add(closed(side < 0 ? right : left, RIM));
        }
    }

    private static List<Point> ring(Point centre, int radius, int off, UnaryOperator<Point> placed) {
        List<Point> ring = new ArrayList<>();
        for (int i = 0; i < SIDES; i++) {
            double turn = 2 * Math.PI * (i + 0.5) / SIDES;
            ring.add(placed.apply(new Point(
                    centre.x() + (int) Math.round(radius * Math.cos(turn)),
                    centre.y() + off,
                    centre.z() + (int) Math.round(radius * Math.sin(turn)))));
        }
        return ring;
    }

    private static Trace closed(List<Point> ring, Pen pen) {
        List<Point> points = new ArrayList<>(ring);
        points.add(ring.get(0));
        return new Trace(points, pen);
    }
}

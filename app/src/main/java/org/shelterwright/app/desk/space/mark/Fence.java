package org.shelterwright.app.desk.space.mark;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.drawing.Lines;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.look.Role;

/** The fence round an area: a line with short ticks at 45° on the side where one may not be. */
final class Fence {
    private static final Pen LINE = Pen.of(0.45, Role.FENCE.colour());
    private static final Pen TICK = Pen.of(0.3, Role.FENCE.colour());
    private static final double PITCH = 1.8;
    private static final double TICK_LENGTH = 1.7;

    private Fence() {}

    /** Round a convex ring of places, which must not be closed. */
    static List<Shape> around(List<Spot> ring) {
        double x = ring.stream().mapToDouble(Spot::x).average().orElse(0);
        double y = ring.stream().mapToDouble(Spot::y).average().orElse(0);
        List<List<Spot>> ticks = new ArrayList<>();
        List<Spot> closed = new ArrayList<>(ring);
        closed.add(ring.get(0));
        for (int i = 0; i < ring.size(); i++) {
            Spot a = closed.get(i);
            Spot b = closed.get(i + 1);
            double length = a.distance(b);
            if (length < PITCH) {
                continue;
            }
            double ux = (b.x() - a.x()) / length;
            double uy = (b.y() - a.y()) / length;
            boolean outside = (a.x() - x) * -uy + (a.y() - y) * ux > 0;
            double nx = outside ? -uy : uy;
            double ny = outside ? ux : -ux;
            for (double at = PITCH / 2; at < length; at += PITCH) {
                Spot foot = a.plus(ux * at, uy * at);
                ticks.add(List.of(
                        foot,
                        foot.plus((nx + ux) * TICK_LENGTH * Math.sqrt(0.5), (ny + uy) * TICK_LENGTH * Math.sqrt(0.5))));
            }
        }
        return List.of(new Lines(List.of(closed), LINE), new Lines(ticks, TICK));
    }
}

package org.shelterwright.app.desk.hand;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;

/** Distances from what is dragged to what it faces. */
final class Distances {
    private Distances() {}

    /** The nearest neighbour on each side of each of the axes; overlapping counts as nearest of all. */
    static List<Clearance> of(Box box, List<Neighbour> neighbours, Set<Axis> axes) {
        List<Clearance> found = new ArrayList<>();
        for (Axis axis : axes) {
            for (boolean high : new boolean[] {false, true}) {
                Clearance nearest = nearest(box, neighbours, axis, high);
                if (nearest != null) {
                    found.add(nearest);
                }
            }
        }
        return found;
    }

    private static @Nullable Clearance nearest(Box box, List<Neighbour> neighbours, Axis axis, boolean high) {
        Clearance nearest = null;
        for (Neighbour one : neighbours) {
            if (on(one, box, axis) == high && meets(one, box, axis)) {
                Clearance clearance = measure(one, box, axis, high);
                if (nearest == null || clearance.length() < nearest.length()) {
                    nearest = clearance;
                }
            }
        }
        return nearest;
    }

    private static boolean meets(Neighbour one, Box box, Axis axis) {
        return one.surface() ? one.box().extent(axis) == 0 : one.faces(box, axis);
    }

    /** Whether it lies on the high side: by its middle, so that it is told also of what overlaps. */
    private static boolean on(Neighbour one, Box box, Axis axis) {
        long middle = (long) one.box().low(axis) + one.box().high(axis);
        return middle > (long) box.low(axis) + box.high(axis);
    }

    private static Clearance measure(Neighbour one, Box box, Axis axis, boolean high) {
        int mine = high ? box.high(axis) : box.low(axis);
        int other = high ? one.box().low(axis) : one.box().high(axis);
        int length = high ? other - mine : mine - other;
        Point from = shared(one.box(), box).with(axis, mine);
        return new Clearance(
                axis,
                high,
                from,
                from.with(axis, other),
                length,
                one.name(),
                Lengths.format(length).replace('-', '\u2212') + " to " + one.name());
    }

    /** The middle of what both share, seen along the axis; on that axis it means nothing. */
    private static Point shared(Box one, Box box) {
        Point at = Point.ORIGIN;
        for (Axis axis : Axis.values()) {
            int low = Math.max(one.low(axis), box.low(axis));
            int high = Math.min(one.high(axis), box.high(axis));
            at = at.with(axis, low + (high - low) / 2);
        }
        return at;
    }
}

package org.shelterwright.solver.route;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Point;

/** Where the straights of two paths may cross; whether a point lies on both is to be asked of them. */
final class Crossings {
    private Crossings() {}

    static List<Point> of(List<Point> a, List<Point> b) {
        List<Point> found = new ArrayList<>();
        for (int i = 1; i < a.size(); i++) {
            for (int j = 1; j < b.size(); j++) {
                Point crossing = crossing(a.get(i - 1), a.get(i), b.get(j - 1), b.get(j));
                if (crossing != null) {
                    found.add(crossing);
                }
            }
        }
        return found;
    }

    /** The coordinates that are fixed in one of both; {@code null} if they differ or run along the same axis. */
    private static @Nullable Point crossing(Point a0, Point a1, Point b0, Point b1) {
        int[] at = new int[3];
        for (Axis axis : Axis.values()) {
            boolean fixedA = a0.along(axis) == a1.along(axis);
            boolean fixedB = b0.along(axis) == b1.along(axis);
            if (fixedA && fixedB && a0.along(axis) != b0.along(axis) || !fixedA && !fixedB) {
                return null;
            }
            at[axis.ordinal()] = fixedA ? a0.along(axis) : b0.along(axis);
        }
        return new Point(at[0], at[1], at[2]);
    }
}

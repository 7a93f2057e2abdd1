package org.shelterwright.layouts.layout;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Point;

/**
 * How one wire is laid.
 *
 * @param wire id of the wire
 * @param cable id of its cable
 * @param runs from its beginning to its end, each beginning where the one before ends; empty if it lies outside the body
 * @param panel entry panel by which it leaves the body; {@code null} if it stays inside, or ends at a panel
 * @param pinned whether it is to be left as it is
 */
public record Route(
        String wire, String cable, List<Run> runs, @Nullable String panel, boolean pinned) {
    public Route {
        runs = List.copyOf(runs);
    }

    public Route withPinned(boolean kept) {
        return new Route(wire, cable, runs, panel, kept);
    }

    /** Its corners and ends, without those that it passes straight. */
    public List<Point> path() {
        List<Point> points = new ArrayList<>();
        for (Run run : runs) {
            for (Point point : run.path()) {
                add(points, point);
            }
        }
        return points;
    }

    private static void add(List<Point> points, Point next) {
        int size = points.size();
        if (size > 0 && points.get(size - 1).equals(next)) {
            return;
        }
        if (size > 1 && straight(points.get(size - 2), points.get(size - 1), next)) {
            points.set(size - 1, next);
        } else {
            points.add(next);
        }
    }

    /** Whether the middle point lies on the way, along one axis, from the first to the last. */
    private static boolean straight(Point a, Point b, Point c) {
        long abx = (long) b.x() - a.x();
        long aby = (long) b.y() - a.y();
        long abz = (long) b.z() - a.z();
        long bcx = (long) c.x() - b.x();
        long bcy = (long) c.y() - b.y();
        long bcz = (long) c.z() - b.z();
        return aby * bcz == abz * bcy
                && abz * bcx == abx * bcz
                && abx * bcy == aby * bcx
                && abx * bcx + aby * bcy + abz * bcz > 0;
    }
}

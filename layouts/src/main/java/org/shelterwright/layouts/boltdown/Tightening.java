package org.shelterwright.layouts.boltdown;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.space.Point;

/**
 * The order in which the fixings of a unit are tightened: crosswise, so that it is drawn down evenly. After each fixing comes
 * the one nearest to its mirror place about the middle of all; the next pair begins where it is farthest from those done.
 *
 * <p>Source: crosswise tightening in rounds, common practice (as in ASME PCC-1, from memory).
 */
public final class Tightening {
    private Tightening() {}

    /** Numbers of the places in the order of tightening. Cost: cubic in their number. */
    public static List<Integer> crosswise(List<Point> places) {
        List<Integer> left = new ArrayList<>();
        long x = 0;
        long y = 0;
        long z = 0;
        for (int i = 0; i < places.size(); i++) {
            left.add(i);
            x += places.get(i).x();
            y += places.get(i).y();
            z += places.get(i).z();
        }
        List<Integer> order = new ArrayList<>();
        int count = Math.max(1, places.size());
        Point middle = new Point((int) (x / count), (int) (y / count), (int) (z / count));
        while (!left.isEmpty()) {
            boolean pairBegins = order.size() % 2 == 0;
            int next = order.isEmpty()
                    ? left.get(0)
                    : pairBegins
                            ? farthest(places, left, order)
                            : nearest(places, left, mirrored(places.get(order.get(order.size() - 1)), middle));
            order.add(next);
            left.remove(Integer.valueOf(next));
        }
        return order;
    }

    private static Point mirrored(Point p, Point middle) {
        return new Point(2 * middle.x() - p.x(), 2 * middle.y() - p.y(), 2 * middle.z() - p.z());
    }

    private static int nearest(List<Point> places, List<Integer> left, Point to) {
        int best = left.get(0);
        for (int one : left) {
            best = distance(places.get(one), to) < distance(places.get(best), to) ? one : best;
        }
        return best;
    }

    private static int farthest(List<Point> places, List<Integer> left, List<Integer> done) {
        int best = left.get(0);
        for (int one : left) {
            best = least(places, one, done) > least(places, best, done) ? one : best;
        }
        return best;
    }

    private static double least(List<Point> places, int one, List<Integer> done) {
        double least = Double.MAX_VALUE;
        for (int other : done) {
            least = Math.min(least, distance(places.get(one), places.get(other)));
        }
        return least;
    }

    private static double distance(Point a, Point b) {
        double dx = a.x() - (double) b.x();
        double dy = a.y() - (double) b.y();
        double dz = a.z() - (double) b.z();
        return Math.sqrt(dx * dx + dy * dy + dz * dz);
    }
}

package org.shelterwright.app.desk.space.mark;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.shelterwright.app.drawing.Spot;

/** Convex hull of places on paper, after Andrew's monotone chain (1979). Cost: n log n. */
final class Hull {
    private Hull() {}

    static List<Spot> of(List<Spot> spots) {
        List<Spot> sorted = spots.stream()
                .distinct()
                .sorted(Comparator.comparingDouble(Spot::x).thenComparingDouble(Spot::y))
                .toList();
        if (sorted.size() < 3) {
            return sorted;
        }
        List<Spot> hull = new ArrayList<>();
        for (int side = 0; side < 2; side++) {
            int from = hull.size();
            for (int i = 0; i < sorted.size(); i++) {
                Spot next = side == 0 ? sorted.get(i) : sorted.get(sorted.size() - 1 - i);
                while (hull.size() >= from + 2
                        && turn(hull.get(hull.size() - 2), hull.get(hull.size() - 1), next) <= 0) {
                    hull.remove(hull.size() - 1);
                }
                hull.add(next);
            }
            hull.remove(hull.size() - 1);
        }
        return hull;
    }

    private static double turn(Spot a, Spot b, Spot c) {
        return (b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x());
    }
}

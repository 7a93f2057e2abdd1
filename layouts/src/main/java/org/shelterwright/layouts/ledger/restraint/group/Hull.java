package org.shelterwright.layouts.ledger.restraint.group;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/** The convex hull of points: Andrew's monotone chain. */
final class Hull {
    private Hull() {}

    /** The corners counter-clockwise; none if the points span no area. Cost: n log n. */
    static List<Spot> of(List<Spot> points) {
        List<Spot> sorted = points.stream()
                .distinct()
                .sorted(Comparator.comparingDouble(Spot::s).thenComparingDouble(Spot::t))
                .toList();
        List<Spot> hull = new ArrayList<>(chain(sorted));
        List<Spot> back = new ArrayList<>(sorted);
        Collections.reverse(back);
        hull.addAll(chain(back));
        return hull.size() < 3 ? List.of() : List.copyOf(hull);
    }

    /** One side of the hull, without its last point. */
    private static List<Spot> chain(List<Spot> sorted) {
        List<Spot> chain = new ArrayList<>();
        for (Spot spot : sorted) {
            while (chain.size() >= 2 && turn(chain.get(chain.size() - 2), chain.get(chain.size() - 1), spot) <= 0) {
                chain.remove(chain.size() - 1);
            }
            chain.add(spot);
        }
        return chain.subList(0, Math.max(0, chain.size() - 1));
    }

    private static double turn(Spot a, Spot b, Spot c) {
        return (b.s() - a.s()) * (c.t() - a.t()) - (b.t() - a.t()) * (c.s() - a.s());
    }
}

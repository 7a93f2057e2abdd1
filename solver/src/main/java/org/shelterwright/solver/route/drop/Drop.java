package org.shelterwright.solver.route.drop;

import java.util.List;
import org.shelterwright.catalog.space.Point;

/**
 * A run outside trays.
 *
 * @param path its corners and ends, from the port on
 * @param cost laying cost, by {@link Laying}
 */
public record Drop(List<Point> path, long cost) {
    public Drop {
        path = List.copyOf(path);
    }

    public Point end() {
        return path.get(path.size() - 1);
    }
}

package org.shelterwright.solver.route.drop;

import org.shelterwright.catalog.space.Point;

/** What it costs at least from where a run comes into a tray to the other end of the wire. */
@FunctionalInterface
public interface Onward {
    /** Laying cost from a place of the target on. */
    long from(Point place);
}

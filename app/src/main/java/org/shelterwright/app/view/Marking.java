package org.shelterwright.app.view;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;

/**
 * What is drawn over a picture to show one step of work.
 *
 * @param unit id of the unit that is marked; {@code null} if none is
 * @param ghosts where the unit passes on its way, one list of cuboids a place
 * @param route along which it comes, from outside; each bend has a letter
 * @param measures lengths between two places
 */
public record Marking(@Nullable String unit, List<List<Box>> ghosts, List<Point> route, List<Measure> measures) {
    /** A length between two places, with what is written on it. */
    public record Measure(Point from, Point to, String text) {}

    public Marking {
        ghosts = ghosts.stream().map(List::copyOf).toList();
        route = List.copyOf(route);
        measures = List.copyOf(measures);
    }
}

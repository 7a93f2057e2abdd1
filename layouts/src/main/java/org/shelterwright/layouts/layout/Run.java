package org.shelterwright.layouts.layout;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Point;

/**
 * A stretch of a cable: in a tray, or laid along walls and units.
 *
 * @param tray name of the tray; {@code null} outside trays
 * @param part number of its compartment, from zero; {@code null}: the first
 * @param path its middle, in the frame of the body; at least two points
 */
public record Run(@Nullable String tray, @Nullable Integer part, List<Point> path) {
    public Run {
        path = List.copyOf(path);
        if (path.size() < 2) {
            throw new IllegalArgumentException("A run of a cable needs at least two points.");
        }
    }

    public static Run free(List<Point> path) {
        return new Run(null, null, path);
    }

    public int compartment() {
        return part == null ? 0 : part;
    }

    public Point first() {
        return path.get(0);
    }

    public Point last() {
        return path.get(path.size() - 1);
    }
}

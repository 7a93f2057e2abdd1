package org.shelterwright.catalog.body;

import java.util.List;
import org.shelterwright.catalog.item.CableClass;
import org.shelterwright.catalog.space.Millimetres;
import org.shelterwright.catalog.space.Point;

/**
 * A cable tray or duct.
 *
 * @param path its centre line, in the frame of the body; at least two points
 * @param width inside width (µm)
 * @param depth inside depth (µm)
 * @param classes classes of cables that may lie in it
 */
public record Tray(
        String name,
        List<Point> path,
        @Millimetres int width,
        @Millimetres int depth,
        List<CableClass> classes) {
    public Tray {
        path = List.copyOf(path);
        classes = List.copyOf(classes);
        if (path.size() < 2) {
            throw new IllegalArgumentException("The tray \"" + name + "\" needs at least two points.");
        }
        if (width <= 0 || depth <= 0) {
            throw new IllegalArgumentException("The tray \"" + name + "\" must have a width and a depth.");
        }
    }
}

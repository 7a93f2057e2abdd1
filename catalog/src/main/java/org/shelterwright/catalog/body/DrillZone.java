package org.shelterwright.catalog.body;

import java.util.List;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;

/**
 * A backed part of a surface that may be drilled and tapped anywhere.
 *
 * @param area flat cuboid in the surface, in the frame of the body
 */
public record DrillZone(String name, Face surface, Box area, List<String> threads, Strength strength)
        implements HardPoint {
    public DrillZone {
        threads = List.copyOf(threads);
        if (area.extent(surface.axis()) != 0) {
            throw new IllegalArgumentException("The area of \"" + name + "\" must be flat in its surface.");
        }
    }

    @Override
    public boolean takes(Point at) {
        return area.contains(at);
    }

    @Override
    public Box outline() {
        return area;
    }
}

package org.shelterwright.catalog.body;

import java.util.List;
import org.shelterwright.catalog.item.CableClass;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;

/**
 * A panel in a wall through which cables enter.
 *
 * @param area flat cuboid in the wall, in the frame of the body
 * @param places number of glands or connectors that it takes
 * @param classes classes of cables that may pass; empty: all
 */
public record EntryPanel(String name, Face wall, Box area, int places, List<CableClass> classes) {
    public EntryPanel {
        classes = List.copyOf(classes);
        if (places < 1) {
            throw new IllegalArgumentException(
                    "The entry panel \"" + name + "\" must have at least one place, but has " + places + ".");
        }
    }

    /** A panel that cables of all classes may pass. */
    public EntryPanel(String name, Face wall, Box area, int places) {
        this(name, wall, area, places, List.of());
    }

    public boolean takes(CableClass cableClass) {
        return classes.isEmpty() || classes.contains(cableClass);
    }
}

package org.shelterwright.catalog.body;

import java.util.List;
import org.shelterwright.catalog.item.CableClass;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Millimetres;

/**
 * A part of a tray beside a separator.
 *
 * @param width inside width (µm)
 * @param classes classes of cables that may lie in it
 */
public record Compartment(@Millimetres int width, List<CableClass> classes) {
    public Compartment {
        classes = List.copyOf(classes);
        if (width <= 0) {
            throw new IllegalArgumentException("The width of a compartment of a tray must be above zero, but is "
                    + Lengths.format(width) + " mm.");
        }
    }
}

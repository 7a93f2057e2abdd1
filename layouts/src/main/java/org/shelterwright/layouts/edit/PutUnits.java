package org.shelterwright.layouts.edit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Placement;

/**
 * Puts several units at new places, all at once. What is mounted on or under them moves and turns along, unless it is
 * among them.
 *
 * @param name what is done, such as "Drag Rack 2"
 */
public record PutUnits(String name, List<Placement> placements) implements Edit {
    public PutUnits {
        placements = List.copyOf(placements);
    }

    @Override
    public Layout apply(Layout layout) {
        Map<String, Placement> moved = new LinkedHashMap<>();
        for (Placement placement : placements) {
            Units.require(layout, placement.unit());
            moved.put(placement.unit(), placement);
        }
        return Carried.move(layout, moved);
    }
}

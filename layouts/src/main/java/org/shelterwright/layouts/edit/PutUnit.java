package org.shelterwright.layouts.edit;

import java.util.Map;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;

/**
 * Puts a unit at a place on station. What is mounted on or under it moves and turns with it.
 *
 * @param unit id of the unit
 */
public record PutUnit(String unit, Place place) implements Edit {
    @Override
    public String name() {
        return "Put " + unit;
    }

    @Override
    public Layout apply(Layout layout) {
        Units.require(layout, unit);
        Placement old = layout.placements().get(unit);
        Placement changed = old == null ? Placement.of(unit, place) : old.withStation(place);
        return Carried.move(layout, Map.of(unit, changed));
    }
}

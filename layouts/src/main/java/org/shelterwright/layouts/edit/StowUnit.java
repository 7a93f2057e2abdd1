package org.shelterwright.layouts.edit;

import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Place;

/**
 * Gives a unit its place on the road; what is mounted on or under it there moves with it.
 *
 * @param unit id of the unit
 * @param road {@code null}: it stays where it is on station
 */
public record StowUnit(String unit, @Nullable Place road) implements Edit {
    @Override
    public String name() {
        return (road == null ? "Leave " + unit + " in place" : "Stow " + unit) + " on the road";
    }

    @Override
    public Layout apply(Layout layout) {
        return Carried.move(layout, Map.of(unit, Units.placed(layout, unit).withRoad(road)));
    }
}

package org.shelterwright.layouts.edit;

import java.util.Map;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Place;
import org.shelterwright.layouts.layout.Placement;

/**
 * Turns a unit on station; its low corner stays, and what is mounted on or under it turns with it.
 *
 * @param unit id of the unit
 * @param by how far, from x to y
 */
public record TurnUnit(String unit, QuarterTurn by) implements Edit {
    @Override
    public String name() {
        return "Turn " + unit + " by " + by.degrees() + "°";
    }

    @Override
    public Layout apply(Layout layout) {
        Placement old = Units.placed(layout, unit);
        Place place = old.station();
        Pose turned = new Pose(place.pose().at(), place.pose().yaw().plus(by));
        return Carried.move(layout, Map.of(unit, old.withStation(place.with(turned))));
    }
}

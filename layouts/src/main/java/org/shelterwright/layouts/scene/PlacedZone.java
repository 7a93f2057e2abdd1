package org.shelterwright.layouts.scene;

import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.catalog.space.Box;

/**
 * A clear zone, or the sweep of a movable part, in the frame of the body.
 *
 * @param owner the unit that it belongs to
 */
public record PlacedZone(PlacedUnit owner, String name, Purpose purpose, Box box) {
    @Override
    public boolean equals(Object other) {
        return other instanceof PlacedZone zone
                && owner.id().equals(zone.owner.id())
                && name.equals(zone.name)
                && purpose == zone.purpose
                && box.equals(zone.box);
    }

    @Override
    public int hashCode() {
        return box.hashCode() * 31 + name.hashCode();
    }

    @Override
    public String toString() {
        return owner.id() + "/" + name + " " + purpose + " " + box;
    }
}

package org.shelterwright.solver.fit.model;

import java.util.List;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.ItemKind;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.layout.Pin;

/**
 * One place to be found. A bolted unit has one slot for both situations; a loose unit has one slot on station and one on
 * the road.
 *
 * @param index its number among the slots
 * @param onStation whether it is there on station
 * @param onTheRoad whether it is there on the road
 * @param options ways to mount it; empty if there is none
 * @param pin what stays as it is, for its own sake or for that of a pinned guest
 */
public record Slot(
        int index, UnitSpec unit, Item item, boolean onStation, boolean onTheRoad, List<Option> options, Pin pin) {
    public Slot {
        options = List.copyOf(options);
    }

    public boolean in(Situation situation) {
        return situation == Situation.ON_STATION ? onStation : onTheRoad;
    }

    /** Whether it is a loose seat, which people push aside. */
    public boolean pushedAside() {
        return item.kind() == ItemKind.SEAT && item.mounting().loose();
    }

    /** Whether the search may move it at all. */
    public boolean movable() {
        return !pin.whole() && !options.isEmpty();
    }
}

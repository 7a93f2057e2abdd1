package org.shelterwright.layouts.edit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.brief.Wire;
import org.shelterwright.layouts.layout.Layout;

/**
 * Makes a unit one of another item. It keeps its id, name and place, by its low corner, and what is mounted on it stays where it
 * is. Wires that end at a port that the new item lacks go out.
 *
 * @param unit id of the unit
 * @param item its new catalog entry
 */
public record SwapItem(String unit, Item item) implements Edit {
    @Override
    public String name() {
        return "Make " + unit + " a " + item.id();
    }

    @Override
    public Layout apply(Layout layout) {
        Units.require(layout, unit);
        Map<String, Item> held = new LinkedHashMap<>(layout.parts().items());
        Units.hold(held, item);
        List<UnitSpec> units = layout.brief().units().stream()
                .map(one -> one.id().equals(unit) ? new UnitSpec(one.id(), one.name(), item.id(), one.group()) : one)
                .toList();
        Brief brief = layout.brief()
                .withUnits(units)
                .withWires(layout.brief().wires().stream().filter(this::ends).toList());
        return Units.with(layout, brief, Units.used(brief, held));
    }

    private boolean ends(Wire wire) {
        return has(wire.from()) && has(wire.to());
    }

    private boolean has(String end) {
        return !Units.owner(end).equals(unit)
                || item.ports().stream().anyMatch(port -> end.equals(unit + "/" + port.name()));
    }
}

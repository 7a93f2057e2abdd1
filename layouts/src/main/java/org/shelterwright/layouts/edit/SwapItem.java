package org.shelterwright.layouts.edit;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.UnitSpec;
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
        Brief brief = Units.withoutLooseWires(layout.brief().withUnits(units), Set.of(unit), item);
        return Units.with(layout, brief, Units.used(brief, held));
    }
}

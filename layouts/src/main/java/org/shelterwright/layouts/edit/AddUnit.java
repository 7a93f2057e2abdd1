package org.shelterwright.layouts.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.layout.Layout;

/**
 * Adds a unit to the end of the brief, still to be placed.
 *
 * @param item its catalog entry
 */
public record AddUnit(UnitSpec unit, Item item) implements Edit {
    public AddUnit {
        if (!unit.item().equals(item.id())) {
            throw new IllegalArgumentException("The unit \"" + unit.id() + "\" is of item \"" + unit.item()
                    + "\", but the entry given is \"" + item.id() + "\".");
        }
    }

    @Override
    public String name() {
        return "Add " + unit.id();
    }

    @Override
    public Layout apply(Layout layout) {
        Item held = layout.parts().items().get(item.id());
        if (held != null && !held.equals(item)) {
            throw new IllegalArgumentException("The layout holds another version of item \"" + item.id()
                    + "\". Take over the catalog's version first, or add the unit with the version that it holds.");
        }
        if (Units.ofAll(layout.brief()).stream().anyMatch(one -> one.id().equals(unit.id()))) {
            throw new IllegalArgumentException(
                    "The unit id \"" + unit.id() + "\" is given already. Give the new unit another id.");
        }
        List<UnitSpec> units = new ArrayList<>(layout.brief().units());
        units.add(unit);
        Map<String, Item> items = new LinkedHashMap<>(layout.parts().items());
        items.putIfAbsent(item.id(), item);
        return Units.with(layout, layout.brief().withUnits(units), items);
    }
}

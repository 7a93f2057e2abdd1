package org.shelterwright.layouts.edit;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.layout.Layout;

/**
 * Changes the layout's own copy of an item, and so every unit of it, in the body and on the trailer. Each keeps its place, by
 * its low corner. Wires that end at a port that the item lacks now go out. The catalog is not touched.
 *
 * @param item as it is to be; the layout holds another version with the same id
 */
public record ChangeItem(Item item) implements Edit {
    @Override
    public String name() {
        return "Change item " + item.name();
    }

    @Override
    public Layout apply(Layout layout) {
        layout.parts().item(item.id());
        Map<String, Item> items = new LinkedHashMap<>(layout.parts().items());
        items.put(item.id(), item);
        Brief brief = layout.brief();
        Set<String> units = Units.ofAll(brief).stream()
                .filter(unit -> unit.item().equals(item.id()))
                .map(UnitSpec::id)
                .collect(Collectors.toSet());
        return Units.with(layout, Units.withoutLooseWires(brief, units, item), items);
    }
}

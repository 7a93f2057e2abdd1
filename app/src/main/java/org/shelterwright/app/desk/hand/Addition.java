package org.shelterwright.app.desk.hand;

import org.shelterwright.catalog.item.Item;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.edit.AddUnit;
import org.shelterwright.layouts.layout.Layout;

/** A new unit of an item, under the next free name; where the layout holds the item already, it is of the layout's own copy. */
public final class Addition {
    private static final String GROUP = "added";

    private Addition() {}

    public static AddUnit of(Layout layout, Item item) {
        Item held = layout.parts().items().getOrDefault(item.id(), item);
        UnitSpec unit = NewName.of(layout.brief(), held.id(), held.name(), GROUP);
        return new AddUnit(unit, held);
    }
}

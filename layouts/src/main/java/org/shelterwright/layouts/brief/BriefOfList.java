package org.shelterwright.layouts.brief;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.shelterwright.catalog.item.Item;

/** A first brief of an equipment list: so many units of each item, and nothing else asked yet. */
public final class BriefOfList {
    private BriefOfList() {}

    /**
     * The units that a list asks for. One of an item has the id and name of the item; several are numbered.
     *
     * @param quantities how many of each, by the id of the item; one if not told
     */
    public static List<UnitSpec> units(List<Item> items, Map<String, Integer> quantities) {
        Set<String> taken = new HashSet<>();
        items.forEach(item -> taken.add(item.id()));
        List<UnitSpec> units = new ArrayList<>();
        for (Item item : items) {
            int count = quantities.getOrDefault(item.id(), 1);
            String group = item.kind().name().toLowerCase(Locale.ROOT).replace('_', ' ');
            if (count == 1) {
                units.add(new UnitSpec(item.id(), item.name(), item.id(), group));
                continue;
            }
            for (int number = 1; number <= count; number++) {
                String id = item.id() + "-" + number;
                while (!taken.add(id)) {
                    id += "-of-" + count;
                }
                units.add(new UnitSpec(id, item.name() + " " + number, item.id(), group));
            }
        }
        return units;
    }
}

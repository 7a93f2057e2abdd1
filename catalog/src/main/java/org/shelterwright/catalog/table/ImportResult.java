package org.shelterwright.catalog.table;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shelterwright.catalog.item.Item;

/**
 * What an equipment list gave.
 *
 * @param items in the order of the table
 * @param quantities how many of each item the list names, by the id of the item
 * @param mapping how the columns were understood
 * @param notes everything dropped, doubtful or assumed, in the order of the table
 */
public record ImportResult(
        List<Item> items, Map<String, Integer> quantities, ColumnMapping mapping, List<ImportNote> notes) {
    public ImportResult {
        items = List.copyOf(items);
        quantities = Collections.unmodifiableMap(new LinkedHashMap<>(quantities));
        notes = List.copyOf(notes);
    }
}

package org.shelterwright.app.desk.inside;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.item.Item;

/**
 * A bay or stowage place of a unit, opened.
 *
 * @param unit id of the unit
 * @param place name of the bay or stowage place of its item
 * @param racked whether it is a bay
 */
record Inside(String unit, String place, boolean racked) {
    /** All of a unit: bays first, as its item has them. */
    static List<Inside> of(String unit, Item item) {
        List<Inside> all = new ArrayList<>();
        item.bays().forEach(bay -> all.add(new Inside(unit, bay.name(), true)));
        item.stowages().forEach(stowage -> all.add(new Inside(unit, stowage.name(), false)));
        return all;
    }
}

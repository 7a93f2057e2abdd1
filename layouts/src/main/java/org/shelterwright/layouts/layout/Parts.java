package org.shelterwright.layouts.layout;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.carrier.Carrier;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.layouts.brief.Brief;
import org.shelterwright.layouts.brief.TrailerLoad;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.brief.Wire;

/**
 * The catalog entries that a layout uses: its own copy, so that it opens the same years later.
 *
 * @param items by id, in the order of first use
 * @param carrier {@code null} if the body stands alone
 * @param trailer carrier entry of the trailer; {@code null} if there is none
 * @param cables by id: those that wires name, and all of the families that wires are chosen from
 */
public record Parts(
        Body body,
        @Nullable Carrier carrier,
        @Nullable Carrier trailer,
        Map<String, Item> items,
        Map<String, Cable> cables) {
    public Parts {
        cables = Collections.unmodifiableMap(new LinkedHashMap<>(cables));
        items = Collections.unmodifiableMap(new LinkedHashMap<>(items));
    }

    /** Parts without cables. */
    public Parts(Body body, @Nullable Carrier carrier, @Nullable Carrier trailer, Map<String, Item> items) {
        this(body, carrier, trailer, items, Map.of());
    }

    /**
     * Takes from a catalog what a brief names.
     *
     * @throws IllegalArgumentException naming the unit and the id, if an entry is missing; a missing cable is left out, and
     *     the ledger tells
     */
    public static Parts of(Brief brief, Catalog catalog) {
        Map<String, Item> items = new LinkedHashMap<>();
        for (UnitSpec unit : brief.units()) {
            items.put(unit.item(), find(catalog::item, unit.item(), "item", "unit \"" + unit.id() + "\""));
        }
        var trailer = brief.trailer();
        if (trailer != null) {
            for (TrailerLoad load : trailer.loads()) {
                UnitSpec unit = load.unit();
                items.put(unit.item(), find(catalog::item, unit.item(), "item", "unit \"" + unit.id() + "\""));
            }
        }
        String by = "brief \"" + brief.id() + "\"";
        return new Parts(
                find(catalog::body, brief.body(), "body", by),
                brief.carrier() == null ? null : find(catalog::carrier, brief.carrier(), "carrier", by),
                trailer == null ? null : find(catalog::carrier, trailer.carrier(), "carrier", by),
                items,
                cables(brief, catalog));
    }

    private static Map<String, Cable> cables(Brief brief, Catalog catalog) {
        Map<String, Cable> cables = new LinkedHashMap<>();
        for (Wire wire : brief.wires()) {
            String type = wire.type();
            if (type != null) {
                catalog.cable(type).ifPresent(cable -> cables.put(cable.id(), cable));
            } else {
                catalog.cables().stream()
                        .filter(cable -> cable.family().equals(wire.family()))
                        .forEach(cable -> cables.put(cable.id(), cable));
            }
        }
        return cables;
    }

    /**
     * Finds an item.
     *
     * @throws IllegalArgumentException if it is not among the parts
     */
    public Item item(String id) {
        Item item = items.get(id);
        if (item == null) {
            throw new IllegalArgumentException("The layout holds no item \"" + id + "\".");
        }
        return item;
    }

    private static <T> T find(Function<String, Optional<T>> catalog, String id, String kind, String user) {
        return catalog.apply(id)
                .orElseThrow(() -> new IllegalArgumentException("The " + kind + " \"" + id + "\" of " + user
                        + " is not in the catalog. List what is there with: shelterwright catalog list."));
    }
}

package org.shelterwright.layouts.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.carrier.Carrier;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.json.CatalogFormats;
import org.shelterwright.catalog.json.JsonFormat;
import org.shelterwright.catalog.piece.Piece;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Parts;

/** Compares the catalog entries that a layout holds with those of a catalog. */
public final class CatalogChanges {
    private CatalogChanges() {}

    /** The entries that differ: body, carrier, trailer, then items, cables and pieces in the order of first use. */
    public static List<CatalogChange> of(Layout layout, Catalog catalog) {
        List<CatalogChange> changes = new ArrayList<>();
        Parts parts = layout.parts();
        String body = parts.body().id();
        compare("body", body, CatalogFormats.BODY, parts.body(), catalog.body(body), changes);
        compare(parts.carrier(), catalog, changes);
        compare(parts.trailer(), catalog, changes);
        for (Item item : parts.items().values()) {
            compare("item", item.id(), CatalogFormats.ITEM, item, catalog.item(item.id()), changes);
        }
        for (Cable cable : parts.cables().values()) {
            compare("cable", cable.id(), CatalogFormats.CABLE, cable, catalog.cable(cable.id()), changes);
        }
        for (Piece piece : layout.contents().kinds().values()) {
            compare("piece", piece.id(), CatalogFormats.PIECE, piece, catalog.piece(piece.id()), changes);
        }
        return changes;
    }

    private static void compare(@Nullable Carrier carrier, Catalog catalog, List<CatalogChange> changes) {
        if (carrier != null) {
            compare("carrier", carrier.id(), CatalogFormats.CARRIER, carrier, catalog.carrier(carrier.id()), changes);
        }
    }

    private static <T> void compare(
            String kind, String id, JsonFormat<T> format, T held, Optional<T> found, List<CatalogChange> changes) {
        if (found.isEmpty()) {
            changes.add(new CatalogChange(kind, id, true, List.of()));
            return;
        }
        List<String> keys = format.differingKeys(held, found.get());
        if (!keys.isEmpty()) {
            changes.add(new CatalogChange(kind, id, false, keys));
        }
    }
}

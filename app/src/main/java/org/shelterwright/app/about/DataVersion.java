package org.shelterwright.app.about;

import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.cable.ConductorTable;
import org.shelterwright.catalog.carrier.Carrier;
import org.shelterwright.catalog.fastener.FastenerTable;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.json.CatalogEntries;
import org.shelterwright.catalog.json.CatalogFormats;
import org.shelterwright.catalog.json.ContentHash;
import org.shelterwright.catalog.json.JsonFormat;
import org.shelterwright.catalog.piece.Piece;

/**
 * The version of a set of catalog entries: a hash of their content, so that it changes when any figure of them does.
 *
 * @param hash twelve hexadecimal digits
 * @param items how many items there are
 * @param bodies how many bodies
 * @param carriers how many carriers
 * @param pieces how many pieces
 */
public record DataVersion(String hash, int items, int bodies, int carriers, int pieces) {
    private static final int DIGITS = 12;

    /** Takes the version of entries; their order does not matter. */
    public static DataVersion of(CatalogEntries entries) {
        StringBuilder all = new StringBuilder();
        add(all, CatalogFormats.ITEM, entries.items(), Item::id);
        add(all, CatalogFormats.BODY, entries.bodies(), Body::id);
        add(all, CatalogFormats.CARRIER, entries.carriers(), Carrier::id);
        add(all, CatalogFormats.FASTENERS, entries.fasteners(), FastenerTable::id);
        add(all, CatalogFormats.CABLE, entries.cables(), Cable::id);
        add(all, CatalogFormats.CONDUCTORS, entries.conductors(), ConductorTable::id);
        add(all, CatalogFormats.PIECE, entries.pieces(), Piece::id);
        String hash = ContentHash.of(all.toString().getBytes(StandardCharsets.UTF_8));
        return new DataVersion(
                hash.substring(0, DIGITS),
                entries.items().size(),
                entries.bodies().size(),
                entries.carriers().size(),
                entries.pieces().size());
    }

    /** One line, such as {@code Data 0123456789ab (52 items, 5 bodies, 4 carriers, 40 pieces)}. */
    public String line() {
        return "Data " + hash + " (" + items + " items, " + bodies + " bodies, " + carriers + " carriers, " + pieces
                + " pieces)";
    }

    private static <T> void add(
            StringBuilder all, JsonFormat<T> format, Collection<T> entries, Function<T, String> id) {
        List<T> sorted = entries.stream().sorted(Comparator.comparing(id)).toList();
        sorted.forEach(entry -> all.append(ContentHash.of(format, entry)).append('\n'));
    }
}

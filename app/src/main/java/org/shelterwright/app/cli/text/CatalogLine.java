package org.shelterwright.app.cli.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.cli.terminal.Shown;
import org.shelterwright.app.cli.terminal.TextTable;
import org.shelterwright.app.cli.terminal.TextTable.Column;
import org.shelterwright.catalog.Catalog;
import org.shelterwright.catalog.carrier.Axle;
import org.shelterwright.catalog.carrier.Carrier;
import org.shelterwright.catalog.item.ItemKind;
import org.shelterwright.catalog.space.Size;

/**
 * One catalog entry in a list.
 *
 * @param entry "item", "body", "carrier", "cable" or "piece"
 * @param kind the kind of an item, such as "rack"; otherwise the same as {@code entry}
 * @param size size of an item or piece, inside of a body; {@code null} of a carrier or cable
 * @param massKg mass of an item or piece, tare of a body or carrier (kg); {@code null} of a cable, or if not known
 */
public record CatalogLine(
        String entry,
        String kind,
        String id,
        String name,
        @Nullable Size size,
        @Nullable Double massKg) {
    private static final List<String> ENTRIES = List.of("item", "body", "carrier", "cable", "piece");

    /** Lists a catalog: items, bodies, carriers, cables, pieces. */
    public static List<CatalogLine> of(Catalog catalog) {
        List<CatalogLine> lines = new ArrayList<>();
        catalog.items()
                .forEach(item -> lines.add(new CatalogLine(
                        "item",
                        word(item.kind()),
                        item.id(),
                        item.name(),
                        item.size(),
                        item.mass().massKg())));
        catalog.bodies()
                .forEach(body -> lines.add(new CatalogLine(
                        "body",
                        "body",
                        body.id(),
                        body.name(),
                        body.inside(),
                        body.tare().massKg())));
        catalog.carriers()
                .forEach(carrier -> lines.add(
                        new CatalogLine("carrier", "carrier", carrier.id(), carrier.name(), null, tareKg(carrier))));
        catalog.cables()
                .forEach(cable -> lines.add(new CatalogLine("cable", "cable", cable.id(), cable.name(), null, null)));
        catalog.pieces()
                .forEach(piece -> lines.add(new CatalogLine(
                        "piece",
                        "piece",
                        piece.id(),
                        piece.name(),
                        piece.size(),
                        piece.mass().massKg())));
        return lines;
    }

    /** What {@link #isA} may be asked. */
    public static List<String> kinds() {
        return Stream.concat(ENTRIES.stream(), Arrays.stream(ItemKind.values()).map(CatalogLine::word))
                .toList();
    }

    public boolean isA(String wanted) {
        return entry.equals(wanted) || kind.equals(wanted);
    }

    public static List<String> table(List<CatalogLine> lines) {
        TextTable table = new TextTable(
                Column.text("Id"),
                Column.text("Kind"),
                Column.text("Name"),
                Column.figures("Size mm"),
                Column.figures("Mass kg"));
        for (CatalogLine line : lines) {
            table.row(line.id, line.kind, line.name, EntryText.size(line.size), Shown.figure(line.massKg));
        }
        return table.lines();
    }

    /** Sum of the axles' tares, which is the tare of the carrier (kg). */
    private static double tareKg(Carrier carrier) {
        return carrier.axles().stream().mapToDouble(Axle::tareKg).sum();
    }

    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}

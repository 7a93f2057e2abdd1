package org.shelterwright.app.cli.json;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.table.ColumnMapping;
import org.shelterwright.catalog.table.ImportNote;
import org.shelterwright.catalog.table.ImportResult;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The result of {@code catalog import} as JSON. */
public final class ImportJson {
    private ImportJson() {}

    /**
     * Gives the result.
     *
     * @param folder where the entries were written; {@code null} if they were not
     * @param brief the brief that was written; {@code null} if none was
     */
    public static String of(
            ResultHead head, int status, ImportResult result, @Nullable String folder, @Nullable Path brief) {
        ObjectNode root = head.begin()
                .put("status", status)
                .put("headerRow", result.mapping().headerRow());
        ArrayNode columns = root.putArray("columns");
        for (ColumnMapping.Column column : result.mapping().columns()) {
            var role = column.role();
            var unit = column.unit();
            columns.addObject()
                    .put("column", column.letter())
                    .put("header", column.header())
                    .put("role", role == null ? null : LedgerJson.id(role))
                    .put("unit", unit == null ? null : unit.symbol())
                    .put("ignoredBecause", column.ignoredBecause());
        }
        ArrayNode items = root.putArray("items");
        for (Item item : result.items()) {
            items.addObject()
                    .put("id", item.id())
                    .put("name", item.name())
                    .put("quantity", result.quantities().getOrDefault(item.id(), 1));
        }
        ArrayNode notes = root.putArray("notes");
        for (ImportNote note : result.notes()) {
            notes.addObject()
                    .put("cell", note.address())
                    .put("kind", LedgerJson.id(note.kind()))
                    .put("sentence", note.sentence());
        }
        root.put("folder", folder);
        ArrayNode list = root.putArray("files");
        if (folder != null) {
            result.items().forEach(item -> list.add(item.id() + ".json"));
        }
        root.put("brief", brief == null ? null : brief.toString());
        return JsonText.write(root);
    }
}

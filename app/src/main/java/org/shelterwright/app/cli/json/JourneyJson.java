package org.shelterwright.app.cli.json;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.transport.JourneyLedger;
import org.shelterwright.layouts.ledger.transport.JourneyLedger.LegLedger;
import org.shelterwright.layouts.transport.scene.JourneyScene;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The result of {@code load} of a journey as JSON. */
public final class JourneyJson {
    private JourneyJson() {}

    /**
     * Gives the result.
     *
     * @param folder what was written into; {@code null} if nothing was written
     */
    public static String of(
            ResultHead head,
            int status,
            long seed,
            JourneyScene scene,
            JourneyLedger ledger,
            @Nullable String folder,
            List<String> files) {
        ObjectNode root = head.begin()
                .put("status", status)
                .put("id", scene.journey().id())
                .put("name", scene.journey().name())
                .put("seed", seed);
        root.set("counts", LedgerJson.counts(ledger.all()));
        ArrayNode table = root.putArray("table");
        ledger.table(scene.legs())
                .forEach(cell -> table.addObject()
                        .put("leg", cell.leg().leg().id())
                        .put("unit", cell.unit())
                        .put("limit", cell.governing().limit())
                        .put("title", cell.governing().title())
                        .put("use", cell.governing().use())
                        .put("verdict", LedgerJson.id(cell.governing().verdict()))
                        .put("source", cell.governing().source().text()));
        ArrayNode legs = root.putArray("legs");
        for (LegLedger leg : ledger.legs()) {
            ObjectNode node = legs.addObject()
                    .put("id", leg.leg().id())
                    .put("mode", LedgerJson.id(leg.leg().mode()));
            node.set("counts", LedgerJson.counts(leg.ledger()));
            ArrayNode rows = node.putArray("rows");
            for (Row row : leg.ledger().rows()) {
                rows.add(LedgerJson.row(
                        row, leg.leg().acceptance(row.limit(), row.units()).orElse(null)));
            }
        }
        root.put("folder", folder);
        ArrayNode list = root.putArray("files");
        files.forEach(list::add);
        return JsonText.write(root);
    }
}

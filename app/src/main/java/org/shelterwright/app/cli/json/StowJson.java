package org.shelterwright.app.cli.json;

import java.nio.file.Path;
import java.util.List;
import org.shelterwright.solver.inside.Stowing;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The result of {@code stow} as JSON. */
public final class StowJson {
    private StowJson() {}

    /**
     * Gives the result.
     *
     * @param files that were written
     */
    public static String of(ResultHead head, int status, Stowing stowing, Path folder, List<String> files) {
        ObjectNode root = head.begin()
                .put("status", status)
                .put("id", stowing.layout().brief().id())
                .put("name", stowing.layout().brief().name())
                .put("inRacks", stowing.racked())
                .put("stowed", stowing.stowed());
        ArrayNode open = root.putArray("toPlace");
        stowing.toPlace().forEach(piece -> open.add(piece.id()));
        root.set("counts", LedgerJson.counts(stowing.ledger()));
        root.set("subjects", LedgerJson.subjects(stowing.ledger()));
        root.put("folder", folder.toString());
        ArrayNode written = root.putArray("files");
        files.forEach(written::add);
        return JsonText.write(root);
    }
}

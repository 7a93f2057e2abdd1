package org.shelterwright.app.cli.json;

import java.util.List;
import org.shelterwright.app.cli.text.CatalogLine;
import org.shelterwright.catalog.json.Problem;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Size;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The results of the verbs of the catalog as JSON. */
public final class CatalogJson {
    private CatalogJson() {}

    /** The result of {@code catalog list}. */
    public static String list(ResultHead head, List<CatalogLine> lines) {
        ObjectNode root = head.begin().put("status", 0);
        ArrayNode entries = root.putArray("entries");
        for (CatalogLine line : lines) {
            ObjectNode node = entries.addObject()
                    .put("entry", line.entry())
                    .put("kind", line.kind())
                    .put("id", line.id())
                    .put("name", line.name());
            Size size = line.size();
            if (size == null) {
                node.putNull("size");
            } else {
                node.putArray("size")
                        .add(Lengths.millimetres(size.x()))
                        .add(Lengths.millimetres(size.y()))
                        .add(Lengths.millimetres(size.z()));
            }
            node.put("massKg", line.massKg());
        }
        return JsonText.write(root);
    }

    /** The result of {@code catalog check}. */
    public static String check(ResultHead head, int status, List<Problem> problems) {
        ObjectNode root = head.begin().put("status", status);
        ArrayNode list = root.putArray("problems");
        problems.forEach(
                problem -> list.addObject().put("where", problem.where()).put("sentence", problem.sentence()));
        return JsonText.write(root);
    }
}

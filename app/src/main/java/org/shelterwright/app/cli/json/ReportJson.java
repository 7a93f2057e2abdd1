package org.shelterwright.app.cli.json;

import java.nio.file.Path;
import java.util.List;
import org.shelterwright.layouts.layout.Layout;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** The result of {@code report} as JSON. */
public final class ReportJson {
    private ReportJson() {}

    /** Gives the result. */
    public static String of(ResultHead head, int status, Layout layout, Path folder, List<String> files) {
        ObjectNode root = head.begin()
                .put("status", status)
                .put("id", layout.brief().id())
                .put("name", layout.brief().name())
                .put("folder", folder.toString());
        ArrayNode list = root.putArray("files");
        files.forEach(list::add);
        return JsonText.write(root);
    }
}

package org.shelterwright.app.cli.json;

import org.shelterwright.app.about.DataVersion;
import org.shelterwright.app.about.ProgramVersion;
import tools.jackson.databind.node.ObjectNode;

/**
 * What every result begins with.
 *
 * @param verb the verb that gave it, such as "check"
 */
public record ResultHead(String verb, ProgramVersion program, DataVersion data) {
    /** Version of the shapes. */
    public static final int VERSION = 1;

    ObjectNode begin() {
        return JsonText.object()
                .put("format", "shelterwright-result-" + verb.replace(' ', '-'))
                .put("version", VERSION)
                .put("program", program.number())
                .put("data", data.hash());
    }
}

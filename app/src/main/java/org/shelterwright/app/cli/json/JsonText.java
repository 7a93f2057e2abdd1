package org.shelterwright.app.cli.json;

import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Makes JSON trees and writes them for people and programs to read. */
final class JsonText {
    static final JsonNodeFactory NODES = JsonNodeFactory.instance;
    private static final JsonMapper MAPPER = JsonMapper.builder().build();

    private JsonText() {}

    static ObjectNode object() {
        return NODES.objectNode();
    }

    /** The same keys in the same order each time; lines end in a newline character alone. */
    static String write(JsonNode node) {
        return MAPPER.writerWithDefaultPrettyPrinter().writeValueAsString(node).replace("\r\n", "\n");
    }
}

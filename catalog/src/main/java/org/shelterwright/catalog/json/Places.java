package org.shelterwright.catalog.json;

import org.jspecify.annotations.Nullable;

/** Where the values of a file stood, for findings that come after reading. */
public final class Places {
    private final String file;
    private final @Nullable Node node;

    Places(String file, @Nullable Node node) {
        this.file = file;
        this.node = node;
    }

    /** Places of what was not read from a file: everything is just at its name. */
    public static Places none(String name) {
        return new Places(name, null);
    }

    /** File, line and column of this value, or what is known of them. */
    public String text() {
        Spot spot = node == null ? null : node.spot();
        return spot == null ? file : file + ", " + spot.text();
    }

    /** The places within one key; where the key is left out, those of the object itself. */
    public Places key(String key) {
        return node instanceof Node.ObjectNode object
                ? object.get(key).map(value -> new Places(file, value)).orElse(this)
                : this;
    }

    /** The places within one element of a list, counted from zero. */
    public Places index(int index) {
        return node instanceof Node.ArrayNode array && index < array.elements().size()
                ? new Places(file, array.elements().get(index))
                : this;
    }
}

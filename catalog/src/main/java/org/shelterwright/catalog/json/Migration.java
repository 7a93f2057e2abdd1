package org.shelterwright.catalog.json;

import java.util.Optional;

/** Brings the content of a file from one version of its format to the next. */
@FunctionalInterface
public interface Migration {
    /** Changes the keys of the root object in place; {@code format} and {@code version} are kept out of it. */
    void upgrade(Content content);

    /** The keys of an object that is being brought to the next version. */
    final class Content {
        private Node.ObjectNode object;

        Content(Node.ObjectNode object) {
            this.object = object;
        }

        /** Gives a key another name, if it is there. */
        public void rename(String old, String current) {
            Optional<Node> value = object.get(old);
            if (value.isPresent()) {
                object = object.without(old).with(current, value.get());
            }
        }

        /** Leaves a key out. */
        public void remove(String key) {
            object = object.without(key);
        }

        /** Adds a key with a text, unless it is there. */
        public void addText(String key, String text) {
            if (object.get(key).isEmpty()) {
                object = object.with(key, new Node.TextNode(null, text));
            }
        }

        Node.ObjectNode object() {
            return object;
        }
    }
}

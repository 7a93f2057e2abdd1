package org.shelterwright.catalog.json;

import org.jspecify.annotations.Nullable;

/** A file whose format and version are known and whose content is still to be read. */
record FileHead(String file, String format, int version, Spots spots, Node.ObjectNode content) {
    /** Where format and version stood. */
    record Spots(String format, String version) {}

    /**
     * Reads the JSON of a file and its first two keys.
     *
     * @throws InputException if it is no JSON, or one of the keys is missing or of the wrong sort
     */
    static FileHead read(InputFile file) {
        Node.ObjectNode root = NodeReader.read(file);
        Trail trail = Trail.of(file.name());
        String format = part(root, "format", ScalarCodecs.TEXT, trail);
        Integer version = part(root, "version", ScalarCodecs.WHOLE, trail);
        if (format == null || version == null) {
            throw new InputException(trail.problems());
        }
        Places places = new Places(file.name(), root);
        return new FileHead(
                file.name(),
                format,
                version,
                new Spots(places.key("format").text(), places.key("version").text()),
                root.without("format").without("version"));
    }

    /**
     * Holds the head against what is needed.
     *
     * @throws InputException if the file is of another format or of a newer version
     */
    void require(String name, int newest) {
        if (!format.equals(name)) {
            throw new InputException(
                    spots.format(),
                    "This is a " + Texts.quoted(format) + " file, but a \"" + name + "\" file is needed here.");
        }
        if (version > newest) {
            throw new InputException(
                    spots.version(),
                    "This file has version " + version + " of \"" + name + "\"; this program reads up to version "
                            + newest + ". Use a newer release of the program.");
        }
        if (version < 1) {
            throw new InputException(
                    spots.version(), "The version must be from 1 to " + newest + ", but is " + version + ".");
        }
    }

    private static <T> @Nullable T part(Node.ObjectNode root, String key, Codec<T> codec, Trail trail) {
        Node node = root.get(key).orElse(null);
        if (node == null) {
            Keys.tellMissing(root, key, trail);
            return null;
        }
        return codec.read(node, trail.key(key));
    }
}

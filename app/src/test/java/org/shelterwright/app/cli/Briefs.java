package org.shelterwright.app.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;

/** Briefs for tests. */
final class Briefs {
    private Briefs() {}

    /** Three units in a large body: found in no time. */
    static String smallPost() {
        try (InputStream in = Briefs.class.getResourceAsStream("briefs/small-post.json")) {
            return new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Puts a file into a folder. */
    static Path write(Path folder, String name, String content) {
        try {
            return Files.writeString(folder.resolve(name), content);
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    static Path smallPost(Path folder) {
        return write(folder, "small-post.json", smallPost());
    }
}

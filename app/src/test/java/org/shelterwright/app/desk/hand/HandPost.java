package org.shelterwright.app.desk.hand;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;

/** A layout of the river post that stays as it is when the sample is fitted anew: tests of editing name its places. */
public final class HandPost {
    private HandPost() {}

    public static Layout layout() {
        try (InputStream in = Objects.requireNonNull(HandPost.class.getResourceAsStream("post.layout.json"))) {
            Path file = Files.createTempFile("post", ".layout.json");
            Files.write(file, in.readAllBytes());
            Layout layout = LayoutFiles.read(file).layout();
            Files.delete(file);
            return layout;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

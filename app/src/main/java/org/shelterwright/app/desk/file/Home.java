package org.shelterwright.app.desk.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Where a layout lives: the place beside which its unsaved work is kept, and the claim on it.
 *
 * @param claim {@code null} if another window has it, whose unsaved work is then not touched
 * @param found what was found there when it was claimed
 */
record Home(Unsaved unsaved, @Nullable Claim claim, Optional<Unsaved.Found> found) implements AutoCloseable {

    /** The home of a file, unless another window has it. */
    static Optional<Home> of(Path file) {
        Unsaved unsaved = new Unsaved(file);
        return Claim.on(file).map(claim -> new Home(unsaved, claim, unsaved.find()));
    }

    static Home ofAnother(Path file) {
        return new Home(new Unsaved(file), null, Optional.empty());
    }

    /** The first free home of a layout that has no file yet. */
    static Home without(Path folder, String id) {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            // Then nothing unsaved can be kept, and saving is all there is.
        }
        Path first = folder.resolve(id + ".json");
        for (int i = 1; i < 100; i++) {
            Optional<Home> home = of(i == 1 ? first : folder.resolve(id + "-" + i + ".json"));
            if (home.isPresent()) {
                return home.get();
            }
        }
        return ofAnother(first);
    }

    boolean claimed() {
        return claim != null;
    }

    Home withoutFound() {
        return found.isEmpty() ? this : new Home(unsaved, claim, Optional.empty());
    }

    @Override
    public void close() {
        if (claim != null) {
            claim.close();
        }
    }
}

package org.shelterwright.app.desk.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Where a layout or journey lives: the place beside which its unsaved work is kept, and the claim on it.
 *
 * @param claim {@code null} if another window has it, whose unsaved work is then not touched
 * @param found what was found there when it was claimed
 */
record Home<T>(Unsaved<T> unsaved, @Nullable Claim claim, Optional<Unsaved.Found<T>> found) implements AutoCloseable {

    /** The home of a file, unless another window has it. */
    static <T> Optional<Home<T>> of(Path file, Filed<T> filed) {
        Unsaved<T> unsaved = new Unsaved<>(file, filed);
        return Claim.on(file).map(claim -> new Home<>(unsaved, claim, unsaved.find()));
    }

    static <T> Home<T> ofAnother(Path file, Filed<T> filed) {
        return new Home<>(new Unsaved<>(file, filed), null, Optional.empty());
    }

    /** The first free home of something that has no file yet. */
    static <T> Home<T> without(Path folder, String id, Filed<T> filed) {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            // Then nothing unsaved can be kept, and saving is all there is.
        }
        Path first = folder.resolve(id + ".json");
        for (int i = 1; i < 100; i++) {
            Optional<Home<T>> home = of(i == 1 ? first : folder.resolve(id + "-" + i + ".json"), filed);
            if (home.isPresent()) {
                return home.get();
            }
        }
        return ofAnother(first, filed);
    }

    boolean claimed() {
        return claim != null;
    }

    /** Why a file must not be written to from here; {@code null} if it may, or without one. */
    @Nullable
    String readOnly(@Nullable Path file) {
        if (file == null) {
            return null;
        }
        if (!claimed()) {
            return file.getFileName() + " is open in another window (" + Claim.holder(file)
                    + "). Here it can be looked at, and saved under another name.";
        }
        Path folder = file.toAbsolutePath().getParent();
        if (!Files.isWritable(file) || folder == null || !Files.isWritable(folder)) {
            return file.getFileName() + " may not be written to. It can be saved under another name.";
        }
        return null;
    }

    Home<T> withoutFound() {
        return found.isEmpty() ? this : new Home<>(unsaved, claim, Optional.empty());
    }

    @Override
    public void close() {
        if (claim != null) {
            claim.close();
        }
    }
}

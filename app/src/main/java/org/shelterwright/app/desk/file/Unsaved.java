package org.shelterwright.app.desk.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.layouts.file.SafeSave;

/** Work that is not saved yet, kept beside its file as {@code NAME.unsaved.json} in case the program ends. */
final class Unsaved<T> {
    /** Ending of files of unsaved work. */
    static final String ENDING = ".unsaved.json";

    private static final String JSON = ".json";

    private final Path file;
    private final Filed<T> filed;
    private boolean ended;

    /** @param home the file of what is on the desk */
    Unsaved(Path home, Filed<T> filed) {
        this.filed = filed;
        String name = home.getFileName().toString();
        String stem = name.endsWith(JSON) ? name.substring(0, name.length() - JSON.length()) : name;
        file = home.resolveSibling(stem + ENDING);
    }

    /** What was found after a crash. */
    record Found<T>(T content, Instant at) {}

    /** @throws InputException if it cannot be written */
    synchronized void keep(T content) {
        if (ended) {
            return;
        }
        Path folder = file.toAbsolutePath().getParent();
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new InputException(file.toString(), "There is no folder " + folder + " to keep unsaved work in.");
        }
        new SafeSave().replace(file, filed.bytes(content));
    }

    /** What is there, if it can be read: a file that was never written whole has another name. */
    Optional<Found<T>> find() {
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        try {
            Instant at = Files.getLastModifiedTime(file).toInstant();
            return Optional.of(new Found<>(filed.read(file), at));
        } catch (IOException | InputException e) {
            return Optional.empty();
        }
    }

    synchronized void drop() {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            // It will be offered again, which loses nothing.
        }
    }

    /** Drops it, and keeps nothing from now on. */
    synchronized void end() {
        ended = true;
        drop();
    }
}

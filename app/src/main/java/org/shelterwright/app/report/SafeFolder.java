package org.shelterwright.app.report;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shelterwright.catalog.json.InputException;

/** Writes files into a folder: all of them under other names first, and only then each to its place. */
public final class SafeFolder {

    private final Path folder;

    public SafeFolder(Path folder) {
        this.folder = folder;
    }

    /**
     * Writes documents.
     *
     * @throws InputException if one cannot be written; what was there before is then untouched
     */
    public void write(List<Document> documents) {
        Map<Path, Path> places = new LinkedHashMap<>();
        try {
            Files.createDirectories(folder);
            for (Document document : documents) {
                Path aside = folder.resolve(".writing-" + document.file());
                places.put(aside, folder.resolve(document.file()));
                Files.write(aside, document.bytes());
            }
            for (Map.Entry<Path, Path> place : places.entrySet()) {
                Files.move(
                        place.getKey(),
                        place.getValue(),
                        StandardCopyOption.ATOMIC_MOVE,
                        StandardCopyOption.REPLACE_EXISTING);
            }
        } catch (IOException e) {
            places.keySet().forEach(SafeFolder::remove);
            throw new InputException(folder.toString(), sentence(e));
        }
    }

    private static String sentence(IOException e) {
        String next = " Choose another folder, or make this one writable. No document was changed.";
        if (e instanceof AccessDeniedException) {
            return "The documents cannot be written: this folder may not be written to." + next;
        }
        if (e instanceof FileAlreadyExistsException) {
            return "The documents cannot be written: this is a file, not a folder." + next;
        }
        return "The documents cannot be written (" + e.getMessage() + "). Is there space left?" + next;
    }

    private static void remove(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException ignored) {
            // The folder cannot be written; the reason is already on its way to the person.
        }
    }
}

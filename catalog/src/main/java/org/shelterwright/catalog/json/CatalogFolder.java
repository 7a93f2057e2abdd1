package org.shelterwright.catalog.json;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** A person's own folder of catalog entries: every {@code .json} file in it and in its folders. */
public final class CatalogFolder {
    private static final int DEEPEST = 8;
    private static final int MOST_FILES = 20_000;
    private static final long LARGEST = 100_000_000;

    private CatalogFolder() {}

    /**
     * Reads all entries of a folder, in the order of their file names. Links are not followed out of the folder.
     *
     * @throws InputException with the problems of all files, or if the folder cannot be read
     */
    public static CatalogEntries read(Path folder) {
        if (!Files.isDirectory(folder)) {
            throw new InputException(
                    folder.toString(), "There is no such folder. Name a folder that holds catalog entries.");
        }
        List<Problem> problems = new ArrayList<>();
        List<InputFile> files = new ArrayList<>();
        long total = 0;
        for (Path file : list(folder)) {
            if (total > LARGEST) {
                throw new InputException(
                        folder.toString(),
                        "The JSON files in the folder have more than 100 MB. Maybe it is not the one you meant.");
            }
            try {
                InputFile read = InputFile.read(file);
                total += read.bytes().length;
                files.add(read);
            } catch (InputException e) {
                problems.addAll(e.problems());
            }
        }
        if (!problems.isEmpty()) {
            throw new InputException(problems);
        }
        return CatalogEntries.read(files);
    }

    private static List<Path> list(Path folder) {
        try (Stream<Path> all = Files.walk(folder, DEEPEST)) {
            List<Path> files = all.filter(file ->
                            file.toString().endsWith(".json") && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS))
                    .limit(MOST_FILES + 1)
                    .sorted()
                    .toList();
            if (files.size() > MOST_FILES) {
                throw new InputException(
                        folder.toString(),
                        "The folder holds more than " + MOST_FILES + " JSON files. Maybe it is not the one you meant.");
            }
            return files;
        } catch (IOException | UncheckedIOException e) {
            throw new InputException(
                    folder.toString(), "The folder could not be read (" + e.getMessage() + "). Check its rights.");
        }
    }
}

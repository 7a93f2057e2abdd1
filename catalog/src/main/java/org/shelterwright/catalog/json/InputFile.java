package org.shelterwright.catalog.json;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Locale;

/**
 * The whole content of a file, within bounds.
 *
 * @param name as messages call it
 */
public record InputFile(String name, byte[] bytes) {
    /** Largest file that is read (bytes): 20 MB. */
    public static final int LARGEST = 20_000_000;

    /**
     * Reads a file.
     *
     * @throws InputException if it is missing, a folder, unreadable, or larger than {@link #LARGEST}
     */
    public static InputFile read(Path file) {
        String name = file.toString();
        if (Files.isDirectory(file)) {
            throw new InputException(name, "This is a folder, but a file is needed. Name a file in it.");
        }
        try (InputStream in = Files.newInputStream(file)) {
            if (Files.size(file) > LARGEST) {
                throw tooLarge(name, Files.size(file));
            }
            byte[] bytes = in.readNBytes(LARGEST + 1);
            if (bytes.length > LARGEST) {
                throw tooLarge(name, bytes.length);
            }
            return new InputFile(name, bytes);
        } catch (NoSuchFileException e) {
            throw new InputException(name, "There is no such file. Check its name and folder.");
        } catch (AccessDeniedException e) {
            throw new InputException(name, "The file may not be read. Ask for the right to read it.");
        } catch (IOException e) {
            throw new InputException(name, "The file could not be read (" + e.getMessage() + "). Try again.");
        }
    }

    private static InputException tooLarge(String name, long size) {
        return new InputException(
                name,
                String.format(
                        Locale.ROOT,
                        "The file has %.1f MB; files of up to %d MB are read. Maybe it is not the file that you meant.",
                        size / 1e6,
                        LARGEST / 1_000_000));
    }
}

package org.shelterwright.layouts.file;

import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import org.shelterwright.catalog.json.ContentHash;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;

/**
 * What a file held when it was read or written, so that a later save notices if another has changed it.
 *
 * @param sha256 hash of its bytes; empty if there was no file
 */
public record Fingerprint(String sha256) {
    /** There was no file. */
    public static final Fingerprint NONE = new Fingerprint("");

    public static Fingerprint of(byte[] bytes) {
        return new Fingerprint(ContentHash.of(bytes));
    }

    /**
     * The fingerprint of a file as it is now; {@link #NONE} if it is not there.
     *
     * @throws InputException if it is there and cannot be read
     */
    public static Fingerprint of(Path file) {
        return Files.exists(file, LinkOption.NOFOLLOW_LINKS)
                ? of(InputFile.read(file).bytes())
                : NONE;
    }
}

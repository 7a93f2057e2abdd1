package org.shelterwright.app.cli.workshop;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.util.Locale;
import org.shelterwright.catalog.json.InputException;

/** Says in one sentence why something could not be written. */
public final class Storage {
    private Storage() {}

    /** The sentence for a place that refused to be written to. */
    public static InputException refused(Path place, Exception cause) {
        return new InputException(place.toString(), sentence(cause));
    }

    /** Why something could not be written, and what to do. */
    public static String sentence(Exception failure) {
        Exception cause = inner(failure);
        String reason = reason(cause);
        String plain = reason.toLowerCase(Locale.ROOT);
        if (cause instanceof AccessDeniedException
                || plain.contains("read-only")
                || plain.contains("denied")
                || plain.contains("not permitted")) {
            return "The folder may not be written to. Choose another, or ask for the right to write there.";
        }
        if (cause instanceof FileAlreadyExistsException
                || cause instanceof NotDirectoryException
                || plain.contains("not a directory")) {
            return "A folder is needed here, but there is a file of that name. Name another folder.";
        }
        if (plain.contains("no space") || plain.contains("not enough space") || plain.contains("quota")) {
            return "The disk is full. Make room, or choose a folder on another disk.";
        }
        return "It could not be written to (" + reason + "). Choose another folder.";
    }

    private static Exception inner(Exception failure) {
        return failure instanceof UncheckedIOException && failure.getCause() instanceof IOException inner
                ? inner
                : failure;
    }

    private static String reason(Exception cause) {
        if (cause instanceof FileSystemException named && named.getReason() != null) {
            return named.getReason();
        }
        return cause.getMessage() == null ? cause.getClass().getSimpleName() : cause.getMessage();
    }
}

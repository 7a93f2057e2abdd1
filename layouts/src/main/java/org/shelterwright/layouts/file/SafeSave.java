package org.shelterwright.layouts.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Locale;
import org.shelterwright.catalog.json.InputException;

/**
 * Saves a file so that at any moment, even when the power fails, either the old or the new content is whole under its
 * name: the new content is written beside it and forced to the disk, the old one is kept as {@code <name>.previous.json},
 * then the new one takes the name, and the folder is forced to the disk.
 */
public final class SafeSave {
    private final Opener opener;

    /** Opens a file for writing that must not be there yet. */
    @FunctionalInterface
    interface Opener {
        FileChannel open(Path file) throws IOException;
    }

    public SafeSave() {
        this(file -> FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE));
    }

    SafeSave(Opener opener) {
        this.opener = opener;
    }

    /**
     * Saves bytes under a name.
     *
     * @param expected what the file held when it was last read or written here; {@link Fingerprint#NONE} if it is to be new
     * @return what the file holds now
     * @throws InputException in one sentence, with everything left as it was, if the file changed on disk since, is already
     *     there, or cannot be written
     */
    public Fingerprint save(Path file, byte[] bytes, Fingerprint expected) {
        requireUnchanged(file, real(file), expected);
        return put(file, bytes, true);
    }

    /**
     * Puts bytes under a name, whatever stood there, of which nothing is kept: for files of the program itself.
     *
     * @return what the file holds now
     * @throws InputException in one sentence, with everything left as it was, if it cannot be written
     */
    public Fingerprint replace(Path file, byte[] bytes) {
        return put(file, bytes, false);
    }

    private Fingerprint put(Path file, byte[] bytes, boolean keepPrevious) {
        Path target = real(file);
        Path folder = target.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new InputException(
                    file.toString(), "There is no folder " + folder + " to save into. Make it, or name another.");
        }
        Path fresh = sibling(target, "." + target.getFileName() + "." + Long.toHexString(System.nanoTime()) + ".new");
        try {
            write(fresh, bytes);
            if (keepPrevious) {
                keepPrevious(target, fresh);
            }
            move(fresh, target);
            force(folder);
            return Fingerprint.of(bytes);
        } catch (IOException | ReadOnlyFileSystemException e) {
            throw new InputException(file.toString(), sentence(e, folder, bytes.length));
        } finally {
            deleteIfThere(fresh);
        }
    }

    /** Where the previous content of a file is kept. */
    public static Path previous(Path file) {
        String name = String.valueOf(file.getFileName());
        String stem = name.endsWith(".json") ? name.substring(0, name.length() - ".json".length()) : name;
        return sibling(file, stem + ".previous.json");
    }

    private static Path real(Path file) {
        try {
            return Files.exists(file) ? file.toRealPath() : file;
        } catch (IOException e) {
            return file;
        }
    }

    private static void requireUnchanged(Path file, Path target, Fingerprint expected) {
        Fingerprint found = Fingerprint.of(target);
        if (found.equals(expected)) {
            return;
        }
        if (expected.equals(Fingerprint.NONE)) {
            throw new InputException(
                    file.toString(),
                    "There is a file of this name already. Save under another name, or remove it first.");
        }
        throw new InputException(
                file.toString(),
                found.equals(Fingerprint.NONE)
                        ? "The file was removed since it was read. Save under another name."
                        : "The file was changed by another since it was read. Save under another name, or read it again.");
    }

    private void write(Path fresh, byte[] bytes) throws IOException {
        try (FileChannel channel = opener.open(fresh)) {
            ByteBuffer left = ByteBuffer.wrap(bytes);
            while (left.hasRemaining()) {
                channel.write(left);
            }
            channel.force(true);
        }
    }

    private static void keepPrevious(Path target, Path fresh) throws IOException {
        if (Files.exists(target)) {
            Path copy = sibling(target, fresh.getFileName() + ".previous");
            try {
                Files.copy(target, copy, StandardCopyOption.COPY_ATTRIBUTES);
                move(copy, previous(target));
            } finally {
                deleteIfThere(copy);
            }
        }
    }

    private static void move(Path from, Path to) throws IOException {
        try {
            Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static void force(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // Some systems cannot force a folder; the file itself is on the disk by now.
        }
    }

    private static void deleteIfThere(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            // A leftover beside the file does no harm and must not hide what went wrong.
        }
    }

    private static Path sibling(Path file, String name) {
        return file.resolveSibling(name);
    }

    private static String sentence(Exception e, Path folder, int size) {
        String reason = String.valueOf(e.getMessage());
        if (e instanceof AccessDeniedException
                || e instanceof ReadOnlyFileSystemException
                || reason.contains("Read-only")) {
            return "The folder " + folder + " may not be written to. Nothing was changed. Save into another folder.";
        }
        if (reason.contains("No space left") || reason.contains("not enough space") || reason.contains("quota")) {
            return String.format(
                    Locale.ROOT,
                    "The disk is full: %.1f kB could not be saved. Nothing was changed. Make room, or save elsewhere.",
                    size / 1e3);
        }
        String cause = e instanceof FileSystemException f && f.getReason() != null ? f.getReason() : reason;
        return "The file could not be saved (" + cause + "). Nothing was changed. Save it elsewhere.";
    }
}

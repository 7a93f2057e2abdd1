package org.shelterwright.app.desk.file;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.json.ContentHash;

/**
 * Where a layout or journey lives: the place beside which its unsaved work is kept, and the claim on it.
 *
 * @param place the file itself; of one in a folder that may not be written to, or without a file, a stand-in in the user's folder
 * @param claim {@code null} if another window has it, whose unsaved work is then not touched
 * @param found what was found there when it was claimed
 */
record Home<T>(Path place, Unsaved<T> unsaved, @Nullable Claim claim, Optional<Unsaved.Found<T>> found)
        implements AutoCloseable {
    /** Folder, in that of the user, of stand-ins. */
    static final String STAND_INS = "unsaved";

    private static final int MOST = 100;
    private static final int HASH = 8;

    /**
     * The home of a file, unless another window has it.
     *
     * @param standIns folder for stand-ins
     */
    static <T> Optional<Home<T>> of(Path file, Path standIns, Filed<T> filed) {
        return at(place(file, standIns), filed);
    }

    static <T> Home<T> ofAnother(Path file, Path standIns, Filed<T> filed) {
        Path place = place(file, standIns);
        return new Home<>(place, new Unsaved<>(place, filed), null, Optional.empty());
    }

    /** The first free home of something that has no file yet. */
    static <T> Home<T> without(Path standIns, String id, Filed<T> filed) {
        make(standIns);
        Path first = standIns.resolve(id + ".json");
        for (int i = 1; i < MOST; i++) {
            Optional<Home<T>> home = at(i == 1 ? first : standIns.resolve(id + "-" + i + ".json"), filed);
            if (home.isPresent()) {
                return home.get();
            }
        }
        return new Home<>(first, new Unsaved<>(first, filed), null, Optional.empty());
    }

    private static <T> Optional<Home<T>> at(Path place, Filed<T> filed) {
        Unsaved<T> unsaved = new Unsaved<>(place, filed);
        return Claim.on(place).map(claim -> new Home<>(place, unsaved, claim, unsaved.find()));
    }

    private static Path place(Path file, Path standIns) {
        Path whole = file.toAbsolutePath().normalize();
        if (mayWriteBeside(whole)) {
            return file;
        }
        make(standIns);
        String hash = ContentHash.of(whole.toString().getBytes(StandardCharsets.UTF_8));
        return standIns.resolve(hash.substring(0, HASH) + "-" + file.getFileName());
    }

    private static boolean mayWriteBeside(Path file) {
        Path folder = file.toAbsolutePath().getParent();
        return folder != null && Files.isWritable(folder);
    }

    /** Whether two names mean one file. */
    static boolean same(Path one, Path other) {
        try {
            return Files.exists(one) && Files.exists(other)
                    ? Files.isSameFile(one, other)
                    : one.toAbsolutePath()
                            .normalize()
                            .equals(other.toAbsolutePath().normalize());
        } catch (IOException e) {
            return false;
        }
    }

    private static void make(Path folder) {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            // Then nothing unsaved can be kept there, which is told at the first change.
        }
    }

    boolean claimed() {
        return claim != null;
    }

    /** Who works at what lives here, such as "mara since 2026-03-01 14:02". */
    String holder() {
        return Claim.holder(place);
    }

    /** Why a file must not be written to from here; {@code null} if it may, or without one. */
    @Nullable
    String readOnly(@Nullable Path file) {
        if (file == null) {
            return null;
        }
        if (!claimed()) {
            return file.getFileName() + " is open in another window (" + holder()
                    + "). Here it can be looked at, and saved under another name.";
        }
        if (!Files.isWritable(file) || !mayWriteBeside(file)) {
            return file.getFileName() + " may not be written to. It can be saved under another name.";
        }
        return null;
    }

    Home<T> withoutFound() {
        return found.isEmpty() ? this : new Home<>(place, unsaved, claim, Optional.empty());
    }

    @Override
    public void close() {
        if (claim != null) {
            claim.close();
        }
    }
}

package org.shelterwright.app.cli.workshop;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.layouts.file.Fingerprint;
import org.shelterwright.layouts.file.LayoutFiles;
import org.shelterwright.layouts.layout.Layout;

/**
 * The folder that a verb writes into. It is made and tried before the work begins, and taken away again at the end if it
 * is new and nothing came into it. Documents appear in it together or not at all.
 */
public final class OutFolder implements AutoCloseable {
    private final Path folder;
    private final List<Path> made;
    private final Map<Path, Fingerprint> seen = new HashMap<>();

    private OutFolder(Path folder, List<Path> made) {
        this.folder = folder;
        this.made = made;
    }

    /**
     * Makes a folder ready, with those that it stands in.
     *
     * @throws InputException if it cannot be made or written to
     */
    public static OutFolder open(Path folder) {
        OutFolder out = new OutFolder(folder, missing(folder));
        try {
            Files.createDirectories(folder);
            Files.delete(Files.createTempFile(folder, ".try", null));
            return out;
        } catch (IOException e) {
            out.close();
            throw Storage.refused(folder, e);
        }
    }

    public Path path() {
        return folder;
    }

    /** Remembers what a file holds now, so that {@link #save} notices if another changes it meanwhile. */
    public void see(String name) {
        Path file = folder.resolve(name);
        seen.put(file, Fingerprint.of(file));
    }

    /**
     * Saves a layout; what stood under this name is kept beside it. If another has changed the file since it was
     * {@link #see seen}, it is left as it is and the layout is saved under a name of its own, since it may have taken
     * long to find.
     *
     * @return the name that it was saved under
     * @throws InputException if it cannot be saved
     */
    public String save(String name, Layout layout) {
        return save(name, (file, expected) -> LayoutFiles.write(layout, file, expected));
    }

    /** Saves something under a name, given what stands there now; it says what stands there then. */
    @FunctionalInterface
    public interface Saving {
        Fingerprint to(Path file, Fingerprint expected);
    }

    /** Saves anything as {@link #save(String, Layout) layouts are saved}. */
    public String save(String name, Saving saving) {
        Path file = folder.resolve(name);
        Fingerprint now = Fingerprint.of(file);
        boolean changed = seen.containsKey(file) && !now.equals(seen.get(file));
        Path target = changed ? free(file) : file;
        seen.put(target, saving.to(target, changed ? Fingerprint.NONE : now));
        return target.getFileName().toString();
    }

    private static Path free(Path file) {
        String stem = file.getFileName().toString().replace(".json", "");
        Path free = file.resolveSibling(stem + ".found.json");
        for (int i = 2; Files.exists(free); i++) {
            free = file.resolveSibling(stem + ".found-" + i + ".json");
        }
        return free;
    }

    /** Work that writes files into a folder. */
    @FunctionalInterface
    public interface Writing {
        void into(Path folder) throws IOException;
    }

    /**
     * Lets files be written aside and then puts them into the folder, over those of the same names.
     *
     * @return their names, sorted
     * @throws InputException if they cannot be written; the folder is then as it was
     */
    public List<String> fill(Writing writing) {
        Path aside = null;
        try {
            aside = Files.createTempDirectory(folder, ".new");
            writing.into(aside);
            List<Path> files = files(aside);
            for (Path file : files) {
                Path target = folder.resolve(aside.relativize(file).toString());
                Files.createDirectories(target.getParent());
                Files.move(file, target, StandardCopyOption.REPLACE_EXISTING);
            }
            Path from = aside;
            return files.stream().map(file -> from.relativize(file).toString()).toList();
        } catch (IOException | UncheckedIOException e) {
            throw Storage.refused(folder, e);
        } finally {
            if (aside != null) {
                remove(aside);
            }
        }
    }

    @Override
    public void close() {
        for (Path one : made) {
            try (Stream<Path> inside = Files.list(one)) {
                if (inside.findAny().isPresent()) {
                    return;
                }
            } catch (IOException e) {
                continue;
            }
            delete(one);
        }
    }

    private static List<Path> missing(Path folder) {
        List<Path> missing = new ArrayList<>();
        for (Path one = folder.toAbsolutePath(); one != null && !Files.exists(one); one = one.getParent()) {
            missing.add(one);
        }
        return missing;
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile).sorted().toList();
        }
    }

    private static void remove(Path folder) {
        try (Stream<Path> all = Files.walk(folder)) {
            all.sorted(Comparator.reverseOrder()).forEach(OutFolder::delete);
        } catch (IOException e) {
            // What is left over does no harm and must not hide what went wrong.
        }
    }

    private static void delete(Path path) {
        try {
            Files.deleteIfExists(path);
        } catch (IOException e) {
            // As above.
        }
    }
}

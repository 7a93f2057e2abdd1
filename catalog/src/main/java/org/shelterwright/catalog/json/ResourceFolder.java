package org.shelterwright.catalog.json;

import java.io.IOException;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Finds the JSON files that lie beside a class, in a folder of classes as well as in a jar, without an index. */
public final class ResourceFolder {
    private static final int DEEPEST = 4;

    private ResourceFolder() {}

    /**
     * Reads every {@code .json} file in the package folder of a class and below, in the order of their names.
     *
     * @throws IllegalStateException if the program's own files cannot be read
     */
    public static List<InputFile> below(Class<?> anchor) {
        URL found = anchor.getResource(anchor.getSimpleName() + ".class");
        if (found == null) {
            throw new IllegalStateException("The class " + anchor.getName() + " has no file of its own.");
        }
        try {
            URI uri = found.toURI();
            if (!uri.getScheme().equals("jar")) {
                return files(folder(Path.of(uri)));
            }
            String text = uri.toString();
            URI jar = URI.create(text.substring("jar:".length(), text.indexOf("!/")));
            try (FileSystem inside = FileSystems.newFileSystem(Path.of(jar), Map.of())) {
                return files(folder(inside.getPath(text.substring(text.indexOf("!/") + 1))));
            }
        } catch (IOException | URISyntaxException e) {
            throw new IllegalStateException("The files beside " + anchor.getName() + " cannot be read.", e);
        }
    }

    private static Path folder(Path file) {
        Path folder = file.getParent();
        return folder == null ? file : folder;
    }

    private static List<InputFile> files(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder, DEEPEST)) {
            List<Path> json = all.filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList();
            return json.stream()
                    .map(file -> new InputFile(
                            "built-in " + folder.relativize(file).toString().replace('\\', '/'),
                            InputFile.read(file).bytes()))
                    .toList();
        }
    }
}

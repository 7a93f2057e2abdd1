package org.shelterwright.app.cli.verb;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.shelterwright.app.report.Document;

/** The files that were written, each with what it is. */
final class Written {
    private final Path folder;
    private final Map<String, String> files = new LinkedHashMap<>();

    Written(Path folder) {
        this.folder = folder;
    }

    Written add(String file, String what) {
        files.put(file, what);
        return this;
    }

    Written add(List<Document> documents) {
        documents.forEach(document -> add(document.file(), document.line()));
        return this;
    }

    List<String> names() {
        return List.copyOf(files.keySet());
    }

    List<String> lines() {
        int width = files.keySet().stream().mapToInt(String::length).max().orElse(0);
        List<String> lines = new ArrayList<>();
        lines.add((files.size() == 1 ? "1 file" : files.size() + " files") + " written to " + folder + ":");
        files.forEach((file, what) ->
                lines.add(("  " + file + " ".repeat(width - file.length()) + "  " + what).stripTrailing()));
        return lines;
    }
}

package org.shelterwright.app.cli.verb;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Says which files were written. */
final class Written {
    private Written() {}

    static List<String> lines(Path folder, List<String> files) {
        List<String> lines = new ArrayList<>();
        lines.add((files.size() == 1 ? "1 file" : files.size() + " files") + " written to " + folder + ":");
        files.forEach(file -> lines.add("  " + file));
        return lines;
    }
}

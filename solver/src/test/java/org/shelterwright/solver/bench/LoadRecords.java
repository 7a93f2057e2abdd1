package org.shelterwright.solver.bench;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.solver.load.model.Support;

/**
 * Published means of the single-container classes, as the data folder tells them, each with how it is known: SEEN, or MEM
 * and MEM+ for what nobody looked up.
 */
final class LoadRecords {
    private static final int FIRST_CLASS = 3;

    private final List<String[]> rows;

    LoadRecords() {
        InputFile file = InputFile.read(LoadRuns.folder().resolve("container-loading/records-per-class.csv"));
        rows = new String(file.bytes(), StandardCharsets.UTF_8)
                .lines()
                .skip(1)
                .map(line -> line.split(","))
                .toList();
    }

    /** The greatest mean of a class, with its method and how it is known; a dash if there is none. */
    String best(Support support, int set) {
        String variant = support == Support.FULL ? "full_support" : "unsupported";
        String best = "–";
        double most = 0;
        for (String[] row : rows) {
            int at = FIRST_CLASS + set - 1;
            if (row[1].equals(variant) && row.length > at && !row[at].isEmpty()) {
                double value = Double.parseDouble(row[at]);
                if (value > most) {
                    most = value;
                    best = String.format(
                            Locale.ROOT,
                            "%.2f (%s, %s)",
                            value,
                            row[0],
                            row[2].equals("SEEN") ? "seen" : "from memory");
                }
            }
        }
        return best;
    }
}

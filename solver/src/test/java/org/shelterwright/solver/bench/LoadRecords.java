package org.shelterwright.solver.bench;

import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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
        return row(support, set)
                .map(row -> String.format(
                        Locale.ROOT,
                        "%.2f (%s, %s)",
                        value(row, set),
                        row[0],
                        row[2].equals("SEEN") ? "seen" : "from memory"))
                .orElse("–");
    }

    /** The greatest mean of a class (%); not a number if there is none. */
    double value(Support support, int set) {
        return row(support, set).map(row -> value(row, set)).orElse(Double.NaN);
    }

    private Optional<String[]> row(Support support, int set) {
        String variant = support == Support.FULL ? "full_support" : "unsupported";
        return rows.stream()
                .filter(row -> row[1].equals(variant) && row.length > at(set) && !row[at(set)].isEmpty())
                .max(Comparator.comparingDouble(row -> value(row, set)));
    }

    private static double value(String[] row, int set) {
        return Double.parseDouble(row[at(set)]);
    }

    private static int at(int set) {
        return FIRST_CLASS + set - 1;
    }
}

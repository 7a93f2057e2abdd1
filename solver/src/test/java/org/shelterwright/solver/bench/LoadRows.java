package org.shelterwright.solver.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.shelterwright.solver.load.model.Support;

/**
 * Runs of the single-container sets in a file, a line each, appended as they come: a measurement of hours can be made in slices, and its
 * table from all of them.
 */
final class LoadRows {
    static final String HEAD = "support,seconds,clock,seed,class,problem,kinds,pieces,percent,spaces,took";
    private static final int CELLS = HEAD.split(",").length;

    private final Path file;

    /**
     * What one run gave.
     *
     * @param clock which clock its limit was on: cpu or wall
     * @param spaces spaces that were looked at
     * @param took how long it took by that clock (s)
     */
    record Row(
            Support support,
            double seconds,
            String clock,
            long seed,
            int set,
            int problem,
            int kinds,
            int pieces,
            double percent,
            long spaces,
            double took) {
        boolean sameRun(Row o) {
            return support == o.support
                    && seconds == o.seconds
                    && clock.equals(o.clock)
                    && seed == o.seed
                    && set == o.set
                    && problem == o.problem;
        }

        private String line() {
            return String.format(
                    Locale.ROOT,
                    "%s,%s,%s,%d,%d,%d,%d,%d,%.4f,%d,%.3f%n",
                    LoadRuns.name(support),
                    seconds,
                    clock,
                    seed,
                    set,
                    problem,
                    kinds,
                    pieces,
                    percent,
                    spaces,
                    took);
        }

        private static Row of(String line) {
            String[] cell = line.split(",");
            if (cell.length != CELLS) {
                throw new IllegalArgumentException(
                        "\"" + line + "\" has " + cell.length + " cells, not the " + CELLS + " of " + HEAD + ".");
            }
            return new Row(
                    cell[0].equals("none") ? Support.NONE : Support.FULL,
                    Double.parseDouble(cell[1]),
                    cell[2],
                    Long.parseLong(cell[3]),
                    Integer.parseInt(cell[4]),
                    Integer.parseInt(cell[5]),
                    Integer.parseInt(cell[6]),
                    Integer.parseInt(cell[7]),
                    Double.parseDouble(cell[8]),
                    Long.parseLong(cell[9]),
                    Double.parseDouble(cell[10]));
        }
    }

    LoadRows(Path file) {
        this.file = file;
    }

    /** All runs so far; a last line that was not finished is left out. */
    List<Row> read() {
        List<Row> rows = new ArrayList<>();
        try {
            if (Files.exists(file)) {
                String text = Files.readString(file);
                text.substring(0, text.lastIndexOf('\n') + 1).lines().skip(1).forEach(line -> rows.add(Row.of(line)));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return rows;
    }

    synchronized void add(Row row) {
        try {
            if (!Files.exists(file)) {
                Files.createDirectories(file.toAbsolutePath().getParent());
                Files.writeString(file, HEAD + System.lineSeparator(), StandardCharsets.UTF_8);
            }
            Files.writeString(file, row.line(), StandardCharsets.UTF_8, StandardOpenOption.APPEND);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

package org.shelterwright.solver.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A table in Markdown. */
final class Table {
    private final List<String> lines = new ArrayList<>();
    private final int columns;

    Table(String... heads) {
        columns = heads.length;
        add((Object[]) heads);
        lines.add("|" + " --- |".repeat(columns));
    }

    /** Adds a row; figures with three significant digits. */
    Table add(Object... cells) {
        if (cells.length != columns) {
            throw new IllegalArgumentException(
                    "The row has " + cells.length + " cells, the table " + columns + " columns.");
        }
        StringBuilder line = new StringBuilder("|");
        for (Object cell : cells) {
            line.append(' ')
                    .append(cell instanceof Double value ? figure(value) : cell)
                    .append(" |");
        }
        lines.add(line.toString());
        return this;
    }

    String text() {
        return String.join("\n", lines) + "\n";
    }

    /** Three significant digits, no exponent. */
    static String figure(double value) {
        if (Double.isNaN(value)) {
            return "–";
        }
        double size = Math.abs(value);
        int digits = size == 0 ? 0 : Math.max(0, 2 - (int) Math.floor(Math.log10(size)));
        return String.format(Locale.ROOT, "%." + Math.min(6, digits) + "f", value);
    }
}

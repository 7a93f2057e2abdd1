package org.shelterwright.app.cli.terminal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A table in plain text: columns as wide as their widest cell, two spaces between. */
public final class TextTable {
    private static final String GAP = "  ";

    private final List<Column> columns;
    private final List<List<String>> lines = new ArrayList<>();

    /** A column: its title, and whether its cells stand at its right edge, as figures do. */
    public record Column(String title, boolean right) {
        public static Column text(String title) {
            return new Column(title, false);
        }

        public static Column figures(String title) {
            return new Column(title, true);
        }
    }

    public TextTable(Column... columns) {
        this.columns = List.of(columns);
    }

    /** Adds a line of cells, one a column. */
    public TextTable row(String... cells) {
        if (cells.length != columns.size()) {
            throw new IllegalStateException(
                    "A line of " + cells.length + " cells does not fit a table of " + columns.size() + " columns.");
        }
        lines.add(Arrays.stream(cells).map(cell -> cell.replace('\n', ' ')).toList());
        return this;
    }

    /** Adds a line that runs across all columns. */
    public TextTable note(String text) {
        lines.add(List.of(text));
        return this;
    }

    public boolean empty() {
        return lines.isEmpty();
    }

    /** Gives the lines, the titles first; no line ends in a space. */
    public List<String> lines() {
        int[] widths = new int[columns.size()];
        for (int i = 0; i < widths.length; i++) {
            int column = i;
            widths[i] = Math.max(
                    width(columns.get(i).title()),
                    lines.stream()
                            .filter(line -> line.size() == widths.length)
                            .mapToInt(line -> width(line.get(column)))
                            .max()
                            .orElse(0));
        }
        List<String> text = new ArrayList<>();
        text.add(line(columns.stream().map(Column::title).toList(), widths));
        for (List<String> cells : lines) {
            text.add(cells.size() == widths.length ? line(cells, widths) : cells.get(0));
        }
        return text;
    }

    private String line(List<String> cells, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < widths.length; i++) {
            String cell = cells.get(i);
            String space = " ".repeat(widths[i] - width(cell));
            line.append(i == 0 ? "" : GAP);
            line.append(columns.get(i).right() ? space + cell : cell + space);
        }
        return line.toString().stripTrailing();
    }

    private static int width(String cell) {
        return cell.codePointCount(0, cell.length());
    }
}

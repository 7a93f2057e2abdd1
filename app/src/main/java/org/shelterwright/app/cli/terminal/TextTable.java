package org.shelterwright.app.cli.terminal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A table in plain text: columns as wide as their widest cell, two spaces between. What would run beyond 100 characters goes on
 * in a further line: a last cell under itself, a note at its indent.
 */
public final class TextTable {
    /** Widest line (characters). */
    public static final int WIDTH = 100;

    private static final String GAP = "  ";
    private static final int LEAST_LAST = 20;

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
            if (cells.size() == widths.length) {
                addRow(text, cells, widths);
            } else {
                text.addAll(wrapped(cells.get(0), WIDTH));
            }
        }
        return text;
    }

    private void addRow(List<String> text, List<String> cells, int[] widths) {
        int last = widths.length - 1;
        int start = Arrays.stream(widths, 0, last)
                .map(width -> width + GAP.length())
                .sum();
        if (start + widths[last] <= WIDTH
                || start > WIDTH - LEAST_LAST
                || columns.get(last).right()) {
            text.add(line(cells, widths));
            return;
        }
        List<String> parts = wrapped(cells.get(last), WIDTH - start);
        List<String> first = new ArrayList<>(cells);
        first.set(last, parts.get(0));
        text.add(line(first, widths));
        parts.stream().skip(1).forEach(part -> text.add(" ".repeat(start) + part));
    }

    /** A text in lines of at most so many characters, each at the indent of the text; a longer word stays whole. */
    public static List<String> wrapped(String text, int width) {
        String indent = " ".repeat(text.length() - text.stripLeading().length());
        List<String> parts = new ArrayList<>();
        StringBuilder part = new StringBuilder(indent);
        for (String word : text.strip().split(" ", -1)) {
            boolean first = part.length() == indent.length();
            if (!first && width(part.toString()) + 1 + width(word) > width) {
                parts.add(part.toString().stripTrailing());
                part = new StringBuilder(indent);
                first = true;
            }
            part.append(first ? "" : " ").append(word);
        }
        parts.add(part.toString().stripTrailing());
        return parts;
    }

    private String line(List<String> cells, int[] widths) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < widths.length; i++) {
            String cell = cells.get(i);
            String space = " ".repeat(Math.max(0, widths[i] - width(cell)));
            line.append(i == 0 ? "" : GAP);
            line.append(columns.get(i).right() ? space + cell : cell + space);
        }
        return line.toString().stripTrailing();
    }

    private static int width(String cell) {
        return cell.codePointCount(0, cell.length());
    }
}

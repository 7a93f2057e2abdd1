package org.shelterwright.app.cli.text;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.cli.terminal.Shown;
import org.shelterwright.app.cli.terminal.TextTable;
import org.shelterwright.app.cli.terminal.TextTable.Column;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.table.ColumnMapping;
import org.shelterwright.catalog.table.ImportNote;
import org.shelterwright.catalog.table.ImportResult;

/** What an equipment list gave, in plain text. */
public final class ImportText {
    private ImportText() {}

    public static List<String> lines(String file, ImportResult result) {
        List<String> lines = new ArrayList<>();
        lines.add(file + ": headers in row " + result.mapping().headerRow() + ", columns understood as");
        for (ColumnMapping.Column column : result.mapping().columns()) {
            lines.add("  " + column.text());
        }
        lines.add("");
        lines.addAll(items(result));
        if (!result.notes().isEmpty()) {
            lines.add("");
            lines.add("To look at:");
            TextTable table = new TextTable(Column.text("Cell"), Column.text("What became of it"), Column.text("Why"));
            for (ImportNote note : result.notes()) {
                table.row(note.address(), word(note.kind()), note.sentence());
            }
            table.lines().forEach(line -> lines.add("  " + line));
        }
        return lines;
    }

    private static List<String> items(ImportResult result) {
        if (result.items().isEmpty()) {
            return List.of("No item came out of it.");
        }
        TextTable table = new TextTable(
                Column.text("Id"),
                Column.text("Name"),
                Column.figures("Size mm"),
                Column.figures("Mass kg"),
                Column.figures("Quantity"));
        for (Item item : result.items()) {
            table.row(
                    item.id(),
                    item.name(),
                    EntryText.size(item.size()),
                    Shown.figure(item.mass().massKg()),
                    String.valueOf(result.quantities().getOrDefault(item.id(), 1)));
        }
        return table.lines();
    }

    private static String word(ImportNote.Kind kind) {
        return switch (kind) {
            case ROW_LEFT_OUT -> "row left out";
            case DROPPED -> "dropped";
            case DOUBTFUL -> "doubtful";
            case ASSUMED -> "filled in";
            case READ_AS -> "read as";
        };
    }
}

package org.shelterwright.app.tables;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;
import org.jspecify.annotations.Nullable;

/** Writes tables as the sheets of a workbook. Equal tables give equal cells; the bytes hold the time of writing. */
public final class Xlsx {

    private static final int WIDEST = 60;

    private Xlsx() {}

    public static byte[] write(List<Table> tables) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (Workbook workbook = new Workbook(out, "Shelterwright", null)) {
            for (Table table : tables) {
                fill(workbook.newWorksheet(table.name()), table);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toByteArray();
    }

    private static void fill(Worksheet sheet, Table table) {
        for (int column = 0; column < table.columns().size(); column++) {
            int widest = table.columns().get(column).length();
            sheet.value(0, column, Guard.text(table.columns().get(column)));
            sheet.style(0, column).bold().wrapText(true).set();
            for (int row = 0; row < table.rows().size(); row++) {
                Object cell = table.rows().get(row).get(column);
                put(sheet, row + 1, column, cell);
                widest = Math.max(widest, cell == null ? 0 : cell.toString().length());
            }
            sheet.width(column, Math.min(WIDEST, widest + 2));
        }
        sheet.freezePane(0, 1);
    }

    private static void put(Worksheet sheet, int row, int column, @Nullable Object cell) {
        if (cell instanceof Number number) {
            sheet.value(row, column, number);
        } else if (cell instanceof String text) {
            sheet.value(row, column, Guard.text(text));
        }
    }
}

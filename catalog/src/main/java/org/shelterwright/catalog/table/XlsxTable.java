package org.shelterwright.catalog.table;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.dhatim.fastexcel.reader.SheetVisibility;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;

/**
 * Reads the first visible sheet that has filled cells of an Office Open XML workbook (ECMA-376). Formulas count with the
 * result that the file holds; nothing is calculated, no link is followed.
 */
final class XlsxTable {
    /** A spreadsheet holds numbers to 15 significant digits; what lies beyond is the noise of binary fractions. */
    private static final MathContext PRECISION = new MathContext(15);

    private static final Pattern NUMBER = Pattern.compile("[-+]?\\d{1,40}(\\.\\d{0,40})?([eE][-+]?\\d{1,3})?");

    /** Broken numbers become cells of kind fault, and do not end the reading. */
    private static final ReadingOptions FAULTS_AS_CELLS = new ReadingOptions(false, true);

    private XlsxTable() {}

    /**
     * @throws InputException if it is no workbook, is broken, or exceeds a bound
     */
    static Table read(InputFile file) {
        try (ReadableWorkbook workbook =
                new ReadableWorkbook(new ByteArrayInputStream(CheckedArchive.of(file)), FAULTS_AS_CELLS)) {
            return read(file.name(), workbook.getSheets().toList());
        } catch (IOException | RuntimeException e) {
            if (e instanceof InputException known) {
                throw known;
            }
            throw new InputException(
                    file.name(), "The workbook cannot be read (" + reason(e) + "). Open it and save it again as XLSX.");
        }
    }

    private static Table read(String file, List<Sheet> sheets) throws IOException {
        List<String> others = new ArrayList<>();
        Table found = null;
        for (Sheet sheet : sheets) {
            Table table = found != null || sheet.getVisibility() != SheetVisibility.VISIBLE ? null : rows(file, sheet);
            if (table != null && !table.rows().isEmpty()) {
                found = table;
            } else {
                others.add("\"" + sheet.getName() + "\"");
            }
        }
        if (found == null) {
            return new Table(file, List.of(), List.of());
        }
        if (others.isEmpty()) {
            return found;
        }
        List<ImportNote> notes = new ArrayList<>(found.notes());
        notes.add(new ImportNote(
                "A1", ImportNote.Kind.DROPPED, "These sheets were not read: " + String.join(", ", others) + "."));
        return new Table(file, found.rows(), notes);
    }

    private static Table rows(String file, Sheet sheet) throws IOException {
        List<Table.Line> lines = new ArrayList<>();
        List<ImportNote> notes = new ArrayList<>();
        notes.add(new ImportNote("A1", ImportNote.Kind.READ_AS, "The sheet \"" + sheet.getName() + "\" was read."));
        try (Stream<Row> rows = sheet.openStream()) {
            for (Iterator<Row> it = rows.iterator(); it.hasNext(); ) {
                Row row = it.next();
                Table.Line line = line(row);
                if (!line.cells().isEmpty()) {
                    Table.requireWithinBounds(file, lines.size(), line);
                    lines.add(line);
                    if (row.isHidden()) {
                        notes.add(new ImportNote(
                                line.cells().get(0).address(),
                                ImportNote.Kind.READ_AS,
                                "The row is hidden in the workbook; it was read like the others."));
                    }
                }
            }
        }
        return new Table(file, lines, notes);
    }

    private static Table.Line line(Row row) {
        List<Cell> cells = new ArrayList<>();
        int number = row.getRowNum() - 1;
        for (org.dhatim.fastexcel.reader.Cell cell : row) {
            Cell read = cell == null ? null : cell(cell, number);
            if (read != null && !read.text().isEmpty()) {
                cells.add(read);
            }
        }
        return new Table.Line(number, cells);
    }

    private static @Nullable Cell cell(org.dhatim.fastexcel.reader.Cell cell, int row) {
        int column = cell.getColumnIndex();
        String raw = cell.getRawValue();
        return switch (cell.getType()) {
            case EMPTY -> null;
            case STRING -> new Cell(column, row, cell.asString(), Cell.Kind.TEXT);
            case NUMBER -> new Cell(column, row, number(raw), Cell.Kind.NUMBER);
            case FORMULA ->
                raw == null || raw.isBlank()
                        ? new Cell(column, row, "formula without a stored result", Cell.Kind.FAULT)
                        : new Cell(column, row, number(raw), Cell.Kind.FORMULA);
            case BOOLEAN -> new Cell(column, row, raw == null ? "" : raw, Cell.Kind.TEXT);
            case ERROR -> new Cell(column, row, raw == null ? "error" : raw, Cell.Kind.FAULT);
        };
    }

    /** The shortest decimal for a stored number; any other text stays as it is. */
    private static String number(@Nullable String raw) {
        if (raw == null || raw.length() > 60 || !NUMBER.matcher(raw).matches()) {
            return raw == null ? "" : raw;
        }
        BigDecimal value = new BigDecimal(raw).round(PRECISION).stripTrailingZeros();
        return value.scale() < -30 || value.scale() > 60 ? raw : value.toPlainString();
    }

    private static String reason(Exception e) {
        String message = e.getMessage();
        return message == null
                ? e.getClass().getSimpleName()
                : message.lines().findFirst().orElse("");
    }
}

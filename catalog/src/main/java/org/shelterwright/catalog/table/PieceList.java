package org.shelterwright.catalog.table;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;
import org.shelterwright.catalog.source.MassBasis;

/**
 * A person's list of pieces from CSV or XLSX. It needs a row of headers with a name, depth, width and height; mass, height units,
 * quantity, fragile, upright, hazard class, unit, task, order, urgency and owner are taken where they are given. Whatever was
 * dropped, doubtful or assumed is told with its address; a row without a name or a size is left out, the rest is taken.
 *
 * @param rows in the order of the table
 * @param notes in the order of the table
 */
public record PieceList(List<PieceRow> rows, List<ImportNote> notes) {
    private static final int HEADER_ROWS = 30;

    public PieceList {
        rows = List.copyOf(rows);
        notes = List.copyOf(notes);
    }

    /**
     * Reads the content of a CSV or XLSX file. Cost: linear in the file.
     *
     * @throws InputException if it cannot be read, exceeds a bound, or has no headers
     */
    public static PieceList read(InputFile file) {
        Table table = EquipmentList.table(file);
        for (int i = 0; i < Math.min(HEADER_ROWS, table.rows().size()); i++) {
            Map<PieceColumn, Integer> columns = columns(table.rows().get(i));
            if (columns.keySet()
                    .containsAll(List.of(PieceColumn.NAME, PieceColumn.DEPTH, PieceColumn.WIDTH, PieceColumn.HEIGHT))) {
                return read(table, i, columns);
            }
        }
        throw new InputException(
                file.name(),
                "No row of headers was found in the first " + HEADER_ROWS + " filled rows: one must name the columns name,"
                        + " depth, width and height, such as \"Name\", \"Depth [mm]\", \"Width [mm]\", \"Height [mm]\".");
    }

    private static PieceList read(Table table, int header, Map<PieceColumn, Integer> columns) {
        List<ImportNote> notes = new ArrayList<>(table.notes());
        Map<PieceColumn, Unit> units = new EnumMap<>(PieceColumn.class);
        Table.Line headers = table.rows().get(header);
        for (Cell cell : headers.cells()) {
            Header read = Header.of(cell.text());
            PieceColumn column = PieceColumn.of(read.name()).orElse(null);
            if (column == null || columns.get(column) != cell.column()) {
                notes.add(new ImportNote(
                        cell.address(),
                        ImportNote.Kind.DROPPED,
                        column == null
                                ? "The column was not used: its header is not known."
                                : "The column was not used: another is already the " + column.meaning() + "."));
            } else if (column.dimension() != null) {
                boolean length = column.dimension() == Unit.Dimension.LENGTH;
                Unit unit = read.unit();
                if (unit == null || unit.dimension() != column.dimension()) {
                    unit = length ? Unit.MM : Unit.KG;
                    notes.add(new ImportNote(
                            cell.address(),
                            ImportNote.Kind.ASSUMED,
                            "The header states no unit: numbers without one were taken in " + unit.symbol() + "."));
                }
                units.put(column, unit);
            }
        }
        List<PieceRow> rows = new ArrayList<>();
        PieceReader reader = new PieceReader(columns, units, notes);
        for (Table.Line line : table.rows().subList(header + 1, table.rows().size())) {
            PieceRow row = reader.row(line);
            if (row != null) {
                rows.add(row);
            }
        }
        if (!columns.containsKey(PieceColumn.MASS)) {
            notes.add(new ImportNote(
                    headers.cells().get(0).address(),
                    ImportNote.Kind.ASSUMED,
                    "No column gives masses: they stay unknown and are not assessed."));
        }
        notes.add(new ImportNote(
                headers.cells().get(0).address(),
                ImportNote.Kind.ASSUMED,
                "Masses were taken as " + MassBasis.ESTIMATED.name().toLowerCase(Locale.ROOT)
                        + "; centres of mass stay unknown and lie somewhere in the piece."));
        return new PieceList(rows, notes);
    }

    private static Map<PieceColumn, Integer> columns(Table.Line line) {
        Map<PieceColumn, Integer> columns = new EnumMap<>(PieceColumn.class);
        for (Cell cell : line.cells()) {
            PieceColumn.of(Header.of(cell.text()).name())
                    .ifPresent(column -> columns.putIfAbsent(column, cell.column()));
        }
        return columns;
    }
}

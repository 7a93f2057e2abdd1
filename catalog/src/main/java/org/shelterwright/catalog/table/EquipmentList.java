package org.shelterwright.catalog.table;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.shelterwright.catalog.json.InputException;
import org.shelterwright.catalog.json.InputFile;

/**
 * Imports a person's equipment list. The table needs a row of headers with a name, depth, width and height; mass, centre
 * of mass, kind, material, mounting, quantity, stacking and notes are taken where they are given. Headers are found by
 * their usual English spellings, with or without a unit.
 *
 * <p>What the table does not say stays unknown or gets a plain default, each told in a note: a mass is never taken as
 * zero, and a number that can be read in two ways is not read.
 */
public final class EquipmentList {
    private EquipmentList() {}

    /**
     * Reads a CSV or XLSX file. Cost: linear in the file.
     *
     * @throws InputException if the file cannot be read, exceeds a bound, or has no headers
     */
    public static ImportResult read(Path file) {
        return read(InputFile.read(file));
    }

    /**
     * Reads the content of a CSV or XLSX file, told apart by its first bytes.
     *
     * @throws InputException if it cannot be read, exceeds a bound, or has no headers
     */
    public static ImportResult read(InputFile file) {
        Table table = table(file);
        if (table.rows().isEmpty()) {
            throw new InputException(
                    file.name(), "The table is empty. Fill in a row of headers and a row for each item.");
        }
        HeaderSearch.Found headers = HeaderSearch.of(table);
        ColumnMapping mapping = headers.mapping();
        List<ImportNote> notes = new ArrayList<>(table.notes());
        notes.addAll(headers.notes());
        addDefaults(mapping, notes);
        boolean decimalCommas = decimalCommas(table, headers);
        ItemRows items = new ItemRows(notes);
        for (Table.Line line :
                table.rows().subList(headers.firstRow(), table.rows().size())) {
            items.add(new RowReader(line, mapping, decimalCommas, notes));
        }
        return new ImportResult(items.items(), items.quantities(), mapping, notes);
    }

    static Table table(InputFile file) {
        byte[] bytes = file.bytes();
        if (startsWith(bytes, 'P', 'K')) {
            return XlsxTable.read(file);
        }
        if (startsWith(bytes, 0xD0, 0xCF, 0x11, 0xE0)) {
            throw new InputException(
                    file.name(),
                    "This is a workbook of an older format or one with a password. Save it as plain XLSX.");
        }
        if (file.name().toLowerCase(Locale.ROOT).endsWith(".xlsx")) {
            throw new InputException(file.name(), "This is no XLSX workbook. Open it and save it again as XLSX.");
        }
        return CsvTable.read(file);
    }

    private static boolean startsWith(byte[] bytes, int... start) {
        for (int i = 0; i < start.length; i++) {
            if (i >= bytes.length || (bytes[i] & 0xFF) != start[i]) {
                return false;
            }
        }
        return true;
    }

    private static boolean decimalCommas(Table table, HeaderSearch.Found headers) {
        return table.rows().stream()
                .skip(headers.firstRow())
                .anyMatch(line -> headers.mapping().columns().stream()
                        .filter(column -> column.role() != null && column.role().numeric())
                        .flatMap(column -> line.cell(column.index()).stream())
                        .anyMatch(cell -> cell.kind() == Cell.Kind.TEXT && NumberText.hasDecimalComma(cell.text())));
    }

    /** Says once what no column tells. */
    private static void addDefaults(ColumnMapping mapping, List<ImportNote> notes) {
        addDefault(mapping, Role.MASS, "No column gives masses: they stay unknown and are not assessed.", notes);
        addDefault(mapping, Role.BASIS, "No column says how masses are known: they were taken as estimated.", notes);
        addDefault(
                mapping,
                Role.CENTRE_X,
                "No centre of mass given: it stays unknown, and what depends on it is not assessed.",
                notes);
        addDefault(mapping, Role.KIND, "No column gives the kind: all items were taken as \"other\".", notes);
        addDefault(mapping, Role.MATERIAL, "No column gives the material: painted sheet was taken.", notes);
        addDefault(
                mapping,
                Role.MOUNTING,
                "No column says where items are mounted: all were taken to stand on the floor.",
                notes);
        addDefault(mapping, Role.QUANTITY, "No column gives quantities: one of each was taken.", notes);
        String headers = "A" + mapping.headerRow();
        notes.add(
                new ImportNote(
                        headers,
                        ImportNote.Kind.ASSUMED,
                        "Tables do not give fixings, clear zones, doors and ports: add them to the items before they are placed."));
        mapping.column(Role.CENTRE_X)
                .ifPresent(column -> notes.add(new ImportNote(
                        column.letter() + mapping.headerRow(),
                        ImportNote.Kind.ASSUMED,
                        "Centres of mass were taken from the rear right bottom corner of each item.")));
    }

    private static void addDefault(ColumnMapping mapping, Role role, String sentence, List<ImportNote> notes) {
        if (mapping.column(role).isEmpty()) {
            notes.add(new ImportNote("A" + mapping.headerRow(), ImportNote.Kind.ASSUMED, sentence));
        }
    }
}

package org.shelterwright.catalog.table;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.json.InputException;

/** Finds the row with the headers, and says what each column is. */
final class HeaderSearch {
    private static final int ROWS = 30;
    private static final Set<Role> SIZES = EnumSet.of(Role.DEPTH, Role.LENGTH, Role.WIDTH, Role.HEIGHT);

    private HeaderSearch() {}

    /**
     * @param mapping what each column is
     * @param firstRow index among the rows of the table of the first one below the headers
     */
    record Found(ColumnMapping mapping, int firstRow, List<ImportNote> notes) {
        Found {
            notes = List.copyOf(notes);
        }
    }

    /**
     * @throws InputException if no row has a name and at least two sizes
     */
    static Found of(Table table) {
        for (int i = 0; i < Math.min(ROWS, table.rows().size()); i++) {
            Set<Role> roles = roles(table.rows().get(i));
            boolean named = roles.contains(Role.NAME) || roles.contains(Role.ID);
            if (named && roles.stream().filter(SIZES::contains).count() >= 2) {
                return found(table, i);
            }
        }
        throw new InputException(
                table.file(),
                "No row of headers was found in the first " + ROWS
                        + " filled rows: one must name the columns name, depth, width and height, such as"
                        + " \"Name\", \"Depth [mm]\", \"Width [mm]\", \"Height [mm]\", \"Mass [kg]\".");
    }

    private static Set<Role> roles(Table.Line line) {
        return line.cells().stream()
                .flatMap(cell -> Role.of(Header.of(cell.text()).name()).stream())
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Role.class)));
    }

    private static Found found(Table table, int index) {
        Table.Line headers = table.rows().get(index);
        Table.Line below = index + 1 < table.rows().size() ? table.rows().get(index + 1) : null;
        boolean unitsBelow = below != null && below.cells().stream().allMatch(HeaderSearch::isUnit);
        Set<Role> all = roles(headers);
        Set<Role> taken = EnumSet.noneOf(Role.class);
        List<ColumnMapping.Column> columns = new ArrayList<>();
        List<ImportNote> notes = new ArrayList<>();
        for (Cell cell : headers.cells()) {
            Unit unitBelow = unitsBelow && below != null ? unit(below, cell.column()) : null;
            columns.add(column(cell, unitBelow, all, taken, notes));
        }
        ColumnMapping mapping = new ColumnMapping(headers.row() + 1, columns);
        return new Found(mapping, index + (unitsBelow ? 2 : 1), notes);
    }

    private static ColumnMapping.Column column(
            Cell cell, @Nullable Unit unitBelow, Set<Role> all, Set<Role> taken, List<ImportNote> notes) {
        Header header = Header.of(cell.text());
        Role role = Role.of(header.name()).orElse(null);
        if (role == null) {
            return ignored(cell, "its header is not known");
        }
        if (role == Role.LENGTH) {
            role = placeOfLength(cell, all, notes);
            if (role == null) {
                return ignored(cell, "depth, width and height are given, so a length has no place");
            }
        }
        if (!taken.add(role)) {
            return ignored(cell, "another column is already the " + role.meaning());
        }
        if (role.dimension() == null) {
            return new ColumnMapping.Column(cell.column(), Cell.letters(cell.column()), cell.text(), role, null, null);
        }
        Unit unit = header.unit() == null ? unitBelow : header.unit();
        if (unit != null && unit.dimension() != role.dimension()) {
            taken.remove(role);
            return ignored(cell, unit.symbol() + " is no unit of a " + role.meaning());
        }
        if (header.unitText() != null && unit == null) {
            taken.remove(role);
            return ignored(cell, "\"" + header.unitText() + "\" is no unit that is known");
        }
        if (unit == null) {
            unit = role.dimension() == Unit.Dimension.LENGTH ? Unit.MM : Unit.KG;
            notes.add(new ImportNote(
                    cell.address(),
                    ImportNote.Kind.ASSUMED,
                    "The header \"" + cell.text() + "\" states no unit: numbers without one were taken in "
                            + unit.symbol() + "."));
        }
        return new ColumnMapping.Column(cell.column(), Cell.letters(cell.column()), cell.text(), role, unit, null);
    }

    /** Length is front to back where no depth is given, else across where no width is given. */
    private static @Nullable Role placeOfLength(Cell cell, Set<Role> all, List<ImportNote> notes) {
        if (all.contains(Role.DEPTH) && all.contains(Role.WIDTH)) {
            return null;
        }
        Role role = all.contains(Role.DEPTH) ? Role.WIDTH : Role.DEPTH;
        notes.add(new ImportNote(
                cell.address(),
                ImportNote.Kind.ASSUMED,
                "The length was taken as the " + role.meaning() + " of each item"
                        + (role == Role.DEPTH ? ", from its back to its front." : ", from its right to its left.")));
        return role;
    }

    private static ColumnMapping.Column ignored(Cell cell, String because) {
        return new ColumnMapping.Column(cell.column(), Cell.letters(cell.column()), cell.text(), null, null, because);
    }

    private static boolean isUnit(Cell cell) {
        return Unit.of(bare(cell)).isPresent();
    }

    private static @Nullable Unit unit(Table.Line line, int column) {
        return line.cell(column).flatMap(cell -> Unit.of(bare(cell))).orElse(null);
    }

    private static String bare(Cell cell) {
        return cell.text().replaceAll("[\\[\\]()]", "");
    }
}

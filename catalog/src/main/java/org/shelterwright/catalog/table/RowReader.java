package org.shelterwright.catalog.table;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.space.Lengths;

/** Reads the cells of one row by the roles of their columns, and notes whatever was not plain. */
final class RowReader {
    private final Table.Line line;
    private final ColumnMapping mapping;
    private final boolean decimalCommas;
    private final List<ImportNote> notes;

    RowReader(Table.Line line, ColumnMapping mapping, boolean decimalCommas, List<ImportNote> notes) {
        this.line = line;
        this.mapping = mapping;
        this.decimalCommas = decimalCommas;
        this.notes = notes;
    }

    Optional<Cell> cell(Role role) {
        return mapping.column(role).flatMap(column -> line.cell(column.index()));
    }

    /** Whether a column has the role. */
    boolean has(Role role) {
        return mapping.column(role).isPresent();
    }

    /** Where the value of a role stands or should stand; the start of the row if no column has the role. */
    String address(Role role) {
        return Cell.address(
                mapping.column(role).map(ColumnMapping.Column::index).orElse(0), line.row());
    }

    String rowAddress() {
        return line.cells().get(0).address();
    }

    @Nullable
    String text(Role role) {
        Cell cell = cell(role).orElse(null);
        if (cell == null) {
            return null;
        }
        if (cell.kind() == Cell.Kind.FAULT) {
            dropped(cell, "holds the fault " + shown(cell));
            return null;
        }
        tellFormula(cell);
        return cell.text();
    }

    /** A length above or at zero (µm); {@code null} if the cell is empty or was not read. */
    @Nullable
    Integer length(Role role, boolean zeroAllowed) {
        Cell cell = cell(role).orElse(null);
        BigDecimal mm = cell == null ? null : measure(cell, role);
        if (cell == null || mm == null) {
            return null;
        }
        if (mm.signum() < 0 || (mm.signum() == 0 && !zeroAllowed)) {
            dropped(cell, "gives a " + role.meaning() + " of " + shown(cell) + ", which must be above zero");
            return null;
        }
        BigDecimal rounded = mm.setScale(3, RoundingMode.HALF_UP);
        int micrometres;
        try {
            micrometres = Lengths.ofMillimetres(rounded);
        } catch (IllegalArgumentException e) {
            dropped(cell, "gives a " + role.meaning() + " of " + shown(cell) + ", which is beyond 500 m");
            return null;
        }
        if (rounded.compareTo(mm) != 0) {
            note(
                    cell,
                    ImportNote.Kind.READ_AS,
                    shown(cell) + " was rounded to " + Lengths.format(micrometres) + " mm.");
        }
        return micrometres;
    }

    /** A mass above zero (kg); {@code null} if the cell is empty or was not read. */
    @Nullable
    Double mass(Role role) {
        Cell cell = cell(role).orElse(null);
        BigDecimal kg = cell == null ? null : measure(cell, role);
        if (cell == null || kg == null) {
            return null;
        }
        if (kg.signum() == 0) {
            note(
                    cell,
                    ImportNote.Kind.DOUBTFUL,
                    "A " + role.meaning() + " of zero was taken as not known, and not as zero.");
            return null;
        }
        if (kg.signum() < 0 || kg.doubleValue() > MassData.LARGEST_KG) {
            dropped(
                    cell,
                    "gives a " + role.meaning() + " of " + shown(cell) + ", which is not from 0 to "
                            + (int) MassData.LARGEST_KG + " kg");
            return null;
        }
        return kg.doubleValue();
    }

    /** How many are asked for: 1 if nothing usable is said. */
    int quantity() {
        Cell cell = cell(Role.QUANTITY).orElse(null);
        if (cell == null) {
            return 1;
        }
        NumberText number = number(cell);
        BigDecimal value = number == null ? null : number.value();
        if (number == null || value == null) {
            return 1;
        }
        boolean whole = value.stripTrailingZeros().scale() <= 0;
        if (!whole || value.signum() <= 0 || value.compareTo(BigDecimal.valueOf(10_000)) > 0 || number.unit() != null) {
            dropped(
                    cell,
                    "gives a quantity of " + shown(cell) + ", which is no whole number from 1 to 10000; 1 was taken");
            return 1;
        }
        return value.intValueExact();
    }

    void note(Cell cell, ImportNote.Kind kind, String sentence) {
        notes.add(new ImportNote(cell.address(), kind, sentence));
    }

    void note(String address, ImportNote.Kind kind, String sentence) {
        notes.add(new ImportNote(address, kind, sentence));
    }

    private void dropped(Cell cell, String why) {
        note(cell, ImportNote.Kind.DROPPED, "The cell " + why + ".");
    }

    private @Nullable BigDecimal measure(Cell cell, Role role) {
        NumberText number = number(cell);
        BigDecimal value = number == null ? null : number.value();
        if (number == null || value == null) {
            return null;
        }
        Unit unit = mapping.column(role).map(ColumnMapping.Column::unit).orElse(null);
        if (number.unit() != null) {
            Unit own = Unit.of(number.unit()).orElse(null);
            if (own == null || own.dimension() != role.dimension()) {
                dropped(cell, "gives the " + role.meaning() + " in \"" + number.unit() + "\", which is no unit of it");
                return null;
            }
            unit = own;
        }
        return unit == null ? null : unit.toBase(value);
    }

    private @Nullable NumberText number(Cell cell) {
        if (cell.kind() == Cell.Kind.FAULT) {
            dropped(cell, "holds the fault " + shown(cell));
            return null;
        }
        NumberText number = NumberText.parse(cell.text(), decimalCommas && cell.kind() == Cell.Kind.TEXT);
        if (number.trouble() != null) {
            note(
                    cell,
                    number.doubtful() ? ImportNote.Kind.DOUBTFUL : ImportNote.Kind.DROPPED,
                    shown(cell) + " " + number.trouble() + ", and was not used.");
            return null;
        }
        tellFormula(cell);
        if (number.remark() != null) {
            note(cell, ImportNote.Kind.READ_AS, shown(cell) + " " + number.remark() + ".");
        }
        return number;
    }

    private void tellFormula(Cell cell) {
        if (cell.kind() == Cell.Kind.FORMULA) {
            note(
                    cell,
                    ImportNote.Kind.READ_AS,
                    "The cell holds a formula; its stored result " + shown(cell) + " was taken.");
        }
    }

    private static String shown(Cell cell) {
        String text = cell.text().length() <= 40 ? cell.text() : cell.text().substring(0, 40) + "…";
        return "\"" + text.replace("\"", "''") + "\"";
    }
}

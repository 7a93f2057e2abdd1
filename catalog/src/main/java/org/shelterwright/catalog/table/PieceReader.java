package org.shelterwright.catalog.table;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.MassData;
import org.shelterwright.catalog.piece.DangerousGoods;
import org.shelterwright.catalog.piece.Loose;
import org.shelterwright.catalog.piece.Piece;
import org.shelterwright.catalog.piece.RackMount;
import org.shelterwright.catalog.piece.Urgency;
import org.shelterwright.catalog.rack.RackStandard;
import org.shelterwright.catalog.source.MassBasis;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Size;

/** Reads the rows of a list of pieces, and notes whatever was not plain. Not for several threads. */
final class PieceReader {
    private static final List<String> YES = List.of("yes", "y", "x", "true", "1");
    private static final List<String> NO = List.of("no", "n", "-", "false", "0");
    private static final int MOST = 1_000;

    private final Map<PieceColumn, Integer> columns;
    private final Map<PieceColumn, Unit> units;
    private final List<ImportNote> notes;
    private final Set<String> ids = new TreeSet<>();

    PieceReader(Map<PieceColumn, Integer> columns, Map<PieceColumn, Unit> units, List<ImportNote> notes) {
        this.columns = columns;
        this.units = units;
        this.notes = notes;
    }

    /** What a row says; {@code null} if it was left out. */
    @Nullable
    PieceRow row(Table.Line line) {
        String name = text(line, PieceColumn.NAME);
        Integer x = length(line, PieceColumn.DEPTH);
        Integer y = length(line, PieceColumn.WIDTH);
        Integer z = length(line, PieceColumn.HEIGHT);
        String start = line.cells().get(0).address();
        if (name == null || x == null || y == null || z == null) {
            String lacks = name == null ? "name" : x == null ? "depth" : y == null ? "width" : "height";
            notes.add(new ImportNote(
                    start, ImportNote.Kind.ROW_LEFT_OUT, "The row was left out: it gives no usable " + lacks + "."));
            return null;
        }
        try {
            return row(line, name, new Size(x, y, z));
        } catch (IllegalArgumentException e) {
            notes.add(new ImportNote(start, ImportNote.Kind.ROW_LEFT_OUT, "The row was left out: " + e.getMessage()));
            return null;
        }
    }

    private PieceRow row(Table.Line line, String name, Size size) {
        Double kg = measure(line, PieceColumn.MASS);
        MassData mass = new MassData(kg, null, MassBasis.ESTIMATED, null, null, null);
        Integer units = whole(line, PieceColumn.UNITS, RackStandard.MOST_UNITS);
        String id = id(name);
        RackMount mount =
                units == null ? null : new RackMount(units, 0, null, List.of(), null, null, null, null, null, false);
        Loose loose = units != null
                ? null
                : new Loose(
                        flag(line, PieceColumn.FRAGILE),
                        flag(line, PieceColumn.UPRIGHT),
                        null,
                        null,
                        goods(line),
                        urgency(line),
                        null);
        Integer quantity = whole(line, PieceColumn.QUANTITY, MOST);
        String task = text(line, PieceColumn.TASK);
        Integer order = whole(line, PieceColumn.ORDER, MOST);
        return new PieceRow(
                new Piece(id, name, size, mass, mount, loose, null, null),
                quantity == null ? 1 : quantity,
                text(line, PieceColumn.WITHIN),
                task,
                task == null ? null : order,
                text(line, PieceColumn.OWNER));
    }

    private @Nullable Cell cell(Table.Line line, PieceColumn column) {
        Integer at = columns.get(column);
        Cell cell = at == null ? null : line.cell(at).orElse(null);
        if (cell != null && cell.kind() == Cell.Kind.FAULT) {
            drop(cell, "it holds a fault");
            return null;
        }
        return cell;
    }

    private @Nullable String text(Table.Line line, PieceColumn column) {
        Cell cell = cell(line, column);
        return cell == null || cell.text().isBlank() ? null : cell.text();
    }

    private @Nullable BigDecimal number(Table.Line line, PieceColumn column) {
        Cell cell = cell(line, column);
        if (cell == null || cell.text().isBlank()) {
            return null;
        }
        NumberText read = NumberText.parse(cell.text(), false);
        BigDecimal value = read.value();
        if (value == null) {
            notes.add(new ImportNote(
                    cell.address(),
                    read.doubtful() ? ImportNote.Kind.DOUBTFUL : ImportNote.Kind.DROPPED,
                    shown(cell) + " " + read.trouble() + ", and was not used."));
            return null;
        }
        Unit unit = units.get(column);
        if (read.unit() != null) {
            unit = Unit.of(read.unit()).orElse(null);
            if (unit == null || unit.dimension() != column.dimension()) {
                drop(cell, "\"" + read.unit() + "\" is no unit of a " + column.meaning());
                return null;
            }
        }
        return unit == null ? value : unit.toBase(value);
    }

    private @Nullable Double measure(Table.Line line, PieceColumn column) {
        BigDecimal value = number(line, column);
        if (value == null) {
            return null;
        }
        Cell cell = cell(line, column);
        if (value.signum() <= 0 || value.doubleValue() > MassData.LARGEST_KG) {
            if (cell != null) {
                drop(cell, "a " + column.meaning() + " must be above zero");
            }
            return null;
        }
        return value.doubleValue();
    }

    private @Nullable Integer length(Table.Line line, PieceColumn column) {
        BigDecimal mm = number(line, column);
        Cell cell = cell(line, column);
        if (mm == null || cell == null) {
            return null;
        }
        if (mm.signum() <= 0 || mm.doubleValue() > 100_000) {
            drop(cell, "a " + column.meaning() + " must be above zero and below 100 m");
            return null;
        }
        return Lengths.ofMillimetres(mm.setScale(3, RoundingMode.HALF_UP));
    }

    private @Nullable Integer whole(Table.Line line, PieceColumn column, int most) {
        BigDecimal value = number(line, column);
        Cell cell = cell(line, column);
        if (value == null || cell == null) {
            return null;
        }
        boolean whole = value.stripTrailingZeros().scale() <= 0;
        if (!whole || value.signum() <= 0 || value.compareTo(BigDecimal.valueOf(most)) > 0) {
            drop(cell, "it must be a whole number from 1 to " + most);
            return null;
        }
        return value.intValueExact();
    }

    private boolean flag(Table.Line line, PieceColumn column) {
        Cell cell = cell(line, column);
        String text = cell == null ? "" : cell.text().toLowerCase(Locale.ROOT);
        if (cell != null && !text.isBlank() && !YES.contains(text) && !NO.contains(text)) {
            drop(cell, "it must be yes or no");
        }
        return YES.contains(text);
    }

    private @Nullable DangerousGoods goods(Table.Line line) {
        Cell cell = cell(line, PieceColumn.CLASS);
        if (cell == null || NO.contains(cell.text().toLowerCase(Locale.ROOT)) || cell.text().isBlank()) {
            return null;
        }
        try {
            return new DangerousGoods(cell.text(), null, Set.of());
        } catch (IllegalArgumentException e) {
            drop(cell, "it is no hazard class such as 3 or 5.1");
            return null;
        }
    }

    private Urgency urgency(Table.Line line) {
        Cell cell = cell(line, PieceColumn.URGENCY);
        if (cell == null || cell.text().isBlank()) {
            return Urgency.LATER;
        }
        String wanted = cell.text().toUpperCase(Locale.ROOT).replace(' ', '_').replace('-', '_');
        for (Urgency one : Urgency.values()) {
            if (one.name().equals(wanted)) {
                return one;
            }
        }
        drop(cell, "it must be at once, soon or later; later was taken");
        return Urgency.LATER;
    }

    private String id(String name) {
        String plain = name.toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-+|-+$", "");
        String base = plain.isEmpty() ? "piece" : plain.substring(0, Math.min(40, plain.length()));
        String id = base;
        for (int number = 2; !ids.add(id); number++) {
            id = base + "-" + number;
        }
        return id;
    }

    private void drop(Cell cell, String why) {
        notes.add(new ImportNote(cell.address(), ImportNote.Kind.DROPPED, shown(cell) + " was not used: " + why + "."));
    }

    private static String shown(Cell cell) {
        String text = cell.text().length() <= 40 ? cell.text() : cell.text().substring(0, 40) + "…";
        return "\"" + text.replace("\"", "''") + "\"";
    }
}

package org.shelterwright.app.report;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/** How the figures of a ledger row are written. */
public final class RowText {

    private RowText() {}

    /** Whether a row has no figures: a limit that is not assessed, or holds with nothing to measure. */
    public static boolean plain(Row row) {
        Double demand = row.demand();
        Double capacity = row.capacity();
        return row.use() == null
                || demand == null
                || capacity == null
                || row.unit().isEmpty() && demand == 0 && capacity == 0;
    }

    /** Demand and capacity, such as "7 610 / 8 000 kg"; where less than nothing is left, "25 / 0 mm, 21.7 over". */
    public static String figures(Row row) {
        Double demand = row.demand();
        Double capacity = row.capacity();
        if (plain(row) || demand == null || capacity == null) {
            return "";
        }
        String words = number(row, demand) + " / ";
        return capacity < 0 && demand >= 0
                ? words + amount(row, 0.0) + ", " + number(row, -capacity) + " over"
                : words + amount(row, capacity);
    }

    /** The same without the unit, where there is little room, such as "7 610 / 8 000". */
    public static String bareFigures(Row row) {
        Double demand = row.demand();
        Double capacity = row.capacity();
        return plain(row) || demand == null || capacity == null
                ? ""
                : number(row, demand) + " / " + number(row, capacity);
    }

    /** What is left, such as "390 kg". */
    public static String margin(Row row) {
        return plain(row) ? "" : amount(row, row.margin());
    }

    /** Demand / capacity; "over" if more is asked where there is none, and empty if there is nothing to be a share of. */
    public static String use(Row row) {
        Double capacity = row.capacity();
        if (plain(row) || capacity == null) {
            return "";
        }
        Double share = row.share();
        return share == null ? "over" : capacity <= 0 ? "" : Numerals.of(share, 2);
    }

    /** A figure of a row with its unit; shares as %. */
    public static String amount(Row row, @Nullable Double value) {
        if (value == null) {
            return "";
        }
        String unit = row.unit().equals("share") ? "%" : row.unit();
        return number(row, value) + (unit.isEmpty() ? "" : gap(unit) + unit);
    }

    /** A sign of a unit stands close; a word, such as "pieces", as words do. */
    private static char gap(String unit) {
        return unit.matches("[a-z][a-z ]{3,}") ? '\u00A0' : Numerals.GAP;
    }

    /** The names of the units that a row concerns. */
    public static String units(Row row, Scene scene) {
        return names(row.units(), scene);
    }

    /** The names of units, by id. */
    public static String names(List<String> units, Scene scene) {
        return units.stream()
                .map(id -> scene.unit(id).map(PlacedUnit::name).orElse(id))
                .collect(Collectors.joining(", "));
    }

    private static String number(Row row, double value) {
        return Numerals.short3(row.unit().equals("share") ? value * 100 : value);
    }
}

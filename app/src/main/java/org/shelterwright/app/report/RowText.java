package org.shelterwright.app.report;

import java.util.List;
import java.util.stream.Collectors;
import org.shelterwright.app.look.Numerals;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/** How the figures of a ledger row are written. */
final class RowText {

    private RowText() {}

    /** Whether a row has no figures: a limit that holds with nothing to measure. */
    static boolean plain(Row row) {
        return row.use() == null || row.unit().isEmpty() && row.demand() != null && row.demand() == 0;
    }

    /** Demand and capacity, such as "7 610 / 8 000 kg". */
    static String figures(Row row) {
        Double demand = row.demand();
        Double capacity = row.capacity();
        if (demand == null || capacity == null || plain(row)) {
            return "";
        }
        return row.unit().equals("share")
                ? Numerals.short3(demand * 100) + " / " + Numerals.short3(capacity * 100) + Numerals.GAP + "%"
                : Numerals.short3(demand) + " / " + Numerals.short3(capacity) + unit(row);
    }

    /** What is left, such as "390 kg". */
    static String margin(Row row) {
        Double margin = row.margin();
        if (margin == null || plain(row)) {
            return "";
        }
        return row.unit().equals("share")
                ? Numerals.short3(margin * 100) + Numerals.GAP + "%"
                : Numerals.short3(margin) + unit(row);
    }

    static String use(Row row) {
        Double use = row.use();
        return use == null || plain(row) ? "" : Numerals.of(use, 2);
    }

    /** The names of the units that a row concerns. */
    static String units(Row row, Scene scene) {
        List<String> names = row.units().stream()
                .map(id -> scene.unit(id).map(PlacedUnit::name).orElse(id))
                .toList();
        return names.stream().collect(Collectors.joining(", "));
    }

    private static String unit(Row row) {
        return row.unit().isEmpty() ? "" : Numerals.GAP + row.unit();
    }
}

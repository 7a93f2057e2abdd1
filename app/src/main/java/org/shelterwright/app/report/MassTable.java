package org.shelterwright.app.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.tables.Table;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;

/** A mass statement as a table, in the columns of a weight and balance sheet. */
final class MassTable {

    private static final List<String> COLUMNS = List.of(
            "ref",
            "name",
            "group",
            "quantity",
            "unit mass kg",
            "source",
            "growth share",
            "uncertainty kg",
            "mass with growth kg",
            "arm x mm",
            "arm y mm",
            "arm z mm",
            "moment x kg·m",
            "moment y kg·m",
            "moment z kg·m");

    private MassTable() {}

    static Table of(MassSheet sheet) {
        List<List<@Nullable Object>> rows = new ArrayList<>();
        sheet.lines().forEach(line -> rows.add(row(line)));
        sheet.subtotals().forEach(total -> rows.add(row("subtotal " + total.name(), total)));
        rows.add(row("total " + sheet.total().name(), sheet.total()));
        String name = sheet.situation() == Situation.ON_STATION ? "On station" : "On the road";
        return new Table("Mass, " + name.toLowerCase(java.util.Locale.ROOT), COLUMNS, rows);
    }

    private static List<@Nullable Object> row(MassLine line) {
        Point arm = line.arm();
        double[] moments = line.momentsKgM();
        return Arrays.asList(
                line.reference(),
                line.name(),
                line.group(),
                1,
                line.massKg(),
                String.valueOf(line.source()).strip(),
                line.growthShare(),
                line.uncertaintyKg(),
                line.grownKg(),
                arm == null ? null : Lengths.millimetres(arm.x()),
                arm == null ? null : Lengths.millimetres(arm.y()),
                arm == null ? null : Lengths.millimetres(arm.z()),
                moments == null ? null : moments[0],
                moments == null ? null : moments[1],
                moments == null ? null : moments[2]);
    }

    private static List<@Nullable Object> row(String name, MassSheet.Total total) {
        double[] centre = total.centreM().orElse(null);
        return Arrays.asList(
                "",
                name,
                "",
                null,
                null,
                "",
                null,
                null,
                total.massKg(),
                centre == null ? null : centre[0] * 1000,
                centre == null ? null : centre[1] * 1000,
                centre == null ? null : centre[2] * 1000,
                total.mx(),
                total.my(),
                total.mz());
    }
}

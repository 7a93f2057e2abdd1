package org.shelterwright.app.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.tables.Table;
import org.shelterwright.layouts.ledger.restraint.RestraintSheet;
import org.shelterwright.layouts.ledger.restraint.RestraintSheet.Group;
import org.shelterwright.layouts.ledger.restraint.RestraintSheet.Line;

/** The restraint sheet as a table: one row a fixing, in its own worst case. */
final class RestraintTable {
    private RestraintTable() {}

    static Table of(RestraintSheet sheet) {
        List<List<@Nullable Object>> rows = new ArrayList<>();
        for (Group group : sheet.groups()) {
            for (Line line : group.fixings()) {
                rows.add(Arrays.asList(
                        group.unit().id(),
                        group.unit().name(),
                        group.on(),
                        group.massKg(),
                        line.name(),
                        line.bolt(),
                        line.into(),
                        line.pullN(),
                        line.shearN(),
                        line.under(),
                        line.boltUse(),
                        line.intoUse(),
                        line.torqueNm(),
                        ""));
            }
            if (group.fixings().isEmpty()) {
                rows.add(Arrays.asList(
                        group.unit().id(),
                        group.unit().name(),
                        group.on(),
                        group.massKg(),
                        "",
                        "",
                        "",
                        null,
                        null,
                        group.governing(),
                        null,
                        null,
                        null,
                        group.missing().isEmpty() ? "not held" : "missing: " + String.join("; ", group.missing())));
            }
        }
        return new Table(
                "Restraint",
                List.of(
                        "unit",
                        "name",
                        "mounted on",
                        "mass held kg",
                        "fixing",
                        "bolt",
                        "into",
                        "pull N",
                        "shear N",
                        "under",
                        "use of bolt",
                        "use of what takes it",
                        "torque N·m",
                        "note"),
                rows);
    }
}

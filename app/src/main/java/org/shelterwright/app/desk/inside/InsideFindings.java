package org.shelterwright.app.desk.inside;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.inside.Held;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.scene.PlacedUnit;

/** What the ledger says of what is open. */
final class InsideFindings {
    private static final Set<Subject> INSIDE = EnumSet.of(Subject.RACKS, Subject.STOWAGE);

    private final InsideDesk desk;

    InsideFindings(InsideDesk desk) {
        this.desk = desk;
    }

    /** The broken rows of racks and stowage that concern the open unit. */
    List<Row> broken() {
        Inside open = desk.opened().get();
        return open == null
                ? List.of()
                : desk.session().now().ledger().rows().stream()
                        .filter(row -> row.verdict() == Verdict.BROKEN
                                && INSIDE.contains(row.subject())
                                && row.units().contains(open.unit()))
                        .toList();
    }

    /** Whether a row shows the place of a piece. */
    boolean shows(Row row, Held piece) {
        Box place = row.place();
        PlacedUnit unit = desk.unit().orElse(null);
        if (place == null || unit == null) {
            return false;
        }
        for (Situation situation : Situation.values()) {
            if (unit.pose(situation).apply(piece.box(), unit.item().size()).equals(place)) {
                return true;
            }
        }
        return false;
    }

    /** How many rows of racks and stowage of the open unit are met or close, in words. */
    String words() {
        Inside open = desk.opened().get();
        long all = open == null
                ? 0
                : desk.session().now().ledger().rows().stream()
                        .filter(row ->
                                INSIDE.contains(row.subject()) && row.units().contains(open.unit()))
                        .count();
        int broken = broken().size();
        return broken == 0
                ? "No limit of racks and stowage is broken in this unit (" + all + " are answered)."
                : broken == 1 ? "1 limit is broken in this unit." : broken + " limits are broken in this unit.";
    }
}

package org.shelterwright.app.desk.hand;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.shelterwright.app.desk.session.Finding;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;

/**
 * Why a unit does not do where it is held: the limits that break there, each with what would mend it.
 *
 * @param rows broken rows, those that hold elsewhere first
 */
public record Breakage(List<Row> rows) {
    public Breakage {
        rows = List.copyOf(rows);
    }

    /**
     * What breaks by a change.
     *
     * @param before the ledger as it was
     * @param now the ledger with the units where they are held
     * @param units ids of the units that are held
     */
    public static Breakage of(Ledger before, Ledger now, Set<String> units) {
        Set<Finding> broken = before.rows().stream()
                .filter(row -> row.verdict() == Verdict.BROKEN)
                .map(Finding::of)
                .collect(Collectors.toSet());
        List<Row> fresh = new ArrayList<>();
        List<Row> still = new ArrayList<>();
        for (Row row : now.rows()) {
            if (row.verdict() == Verdict.BROKEN) {
                if (!broken.contains(Finding.of(row))) {
                    fresh.add(row);
                } else if (row.units().stream().anyMatch(units::contains)) {
                    still.add(row);
                }
            }
        }
        fresh.addAll(still);
        return new Breakage(fresh);
    }

    /** One line for people: what breaks, or that nothing does. */
    public String words() {
        return switch (rows.size()) {
            case 0 -> "Nothing breaks here.";
            case 1 -> "One limit breaks here.";
            default -> rows.size() + " limits break here.";
        };
    }
}

package org.shelterwright.layouts.insight;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;

/** What a change breaks that was not broken before, or breaks further. */
public final class Worsening {
    private final Map<Key, Double> before = new HashMap<>();

    private record Key(String limit, String title, List<String> units) {
        static Key of(Row row) {
            return new Key(row.limit(), row.title(), row.units());
        }
    }

    /** @param before the ledger before the change */
    public Worsening(Ledger before) {
        broken(before).forEach(row -> this.before.merge(Key.of(row), row.excess(), Math::max));
    }

    /** The first row that is broken and was not, or is broken by more; empty if the change breaks nothing. */
    public Optional<Row> first(Ledger after) {
        return broken(after).stream().filter(this::worse).findFirst();
    }

    /** All such rows. */
    public List<Row> all(Ledger after) {
        return broken(after).stream().filter(this::worse).toList();
    }

    private boolean worse(Row row) {
        Double excess = before.get(Key.of(row));
        return excess == null || row.excess() > excess * (1 + 1e-9) + 1e-9;
    }

    private static List<Row> broken(Ledger ledger) {
        return ledger.rows().stream()
                .filter(row -> row.verdict() == Verdict.BROKEN)
                .toList();
    }
}

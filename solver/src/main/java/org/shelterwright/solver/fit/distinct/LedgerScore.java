package org.shelterwright.solver.fit.distinct;

import java.util.HashMap;
import java.util.Map;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.LimitBook;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.solver.fit.model.Amounts;
import org.shelterwright.solver.fit.model.RowAmount;

/** The score of a ledger: the sum of what its rows overstep, by the severity of their limits. */
public final class LedgerScore {
    private LedgerScore() {}

    /**
     * Scores a ledger.
     *
     * @param soft what the search says of wishes and centre of mass; the ledger does not judge these
     * @return hard and medium by {@link RowAmount}, at least 1 a broken row
     */
    public static Amounts of(Ledger ledger, LimitBook book, long soft) {
        Map<String, Severity> severities = new HashMap<>();
        for (Limit limit : book.limits()) {
            severities.put(limit.id(), limit.severity());
        }
        long hard = 0;
        long medium = 0;
        for (Row row : ledger.rows()) {
            if (row.verdict() == Verdict.BROKEN) {
                long excess = RowAmount.excess(row);
                if (severities.get(row.limit()) == Severity.MEDIUM) {
                    medium += excess;
                } else {
                    hard += excess;
                }
            }
        }
        return new Amounts(hard, medium, soft);
    }
}

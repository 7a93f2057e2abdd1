package org.shelterwright.solver.transport;

import java.util.Comparator;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;

/**
 * How good a planned journey is, as its ledger says; the lesser is the better.
 *
 * @param broken rows that are broken
 * @param over by how much they are over together, as shares of their capacity
 * @param notAssessed rows for which data are missing
 * @param close rows that are close
 * @param use greatest use of any row with figures
 */
public record PlanMeasure(int broken, double over, int notAssessed, int close, double use)
        implements Comparable<PlanMeasure> {
    private static final Comparator<PlanMeasure> ORDER = Comparator.comparingInt(PlanMeasure::broken)
            .thenComparingDouble(PlanMeasure::over)
            .thenComparingInt(PlanMeasure::notAssessed)
            .thenComparingInt(PlanMeasure::close)
            .thenComparingDouble(PlanMeasure::use);

    /** Measures a ledger. */
    public static PlanMeasure of(Ledger ledger) {
        double over = 0;
        double most = 0;
        for (Row row : ledger.rows()) {
            Double use = row.use();
            if (use != null && Double.isFinite(use)) {
                over += row.verdict() == Verdict.BROKEN ? Math.max(0, use - 1) : 0;
                most = Math.max(most, use);
            }
        }
        return new PlanMeasure(
                (int) ledger.count(Verdict.BROKEN),
                over,
                (int) ledger.count(Verdict.NOT_ASSESSED),
                (int) ledger.count(Verdict.CLOSE),
                most);
    }

    @Override
    public int compareTo(PlanMeasure other) {
        return ORDER.compare(this, other);
    }
}

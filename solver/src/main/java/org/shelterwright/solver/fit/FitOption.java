package org.shelterwright.solver.fit;

import java.util.Comparator;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Verdict;

/**
 * A layout that a search offers, with the ledger of an independent full check.
 *
 * @param ledger made from scratch by the checker, not by the search
 */
public record FitOption(Layout layout, Ledger ledger, FitScore score) {
    /** What breaks least first; of equals what leaves least unassessed, then what keeps most wishes. */
    static final Comparator<FitOption> BEST_FIRST = Comparator.comparingLong(
                    (FitOption option) -> option.score().hard())
            .thenComparingLong(option -> option.score().medium())
            .thenComparingLong(option -> option.ledger().count(Verdict.NOT_ASSESSED))
            .thenComparingLong(option -> option.score().soft());

    /** Whether it breaks no more than another, and leaves no more unassessed. */
    boolean asGoodAs(FitOption other) {
        return score.hard() <= other.score.hard()
                && score.medium() <= other.score.medium()
                && ledger.count(Verdict.NOT_ASSESSED) <= other.ledger.count(Verdict.NOT_ASSESSED);
    }

    /** Whether every limit is met. */
    boolean holds() {
        return ledger.count(Verdict.BROKEN) == 0 && ledger.count(Verdict.NOT_ASSESSED) == 0;
    }
}

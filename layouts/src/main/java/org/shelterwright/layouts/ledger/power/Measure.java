package org.shelterwright.layouts.ledger.power;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.mend.Rank;
import org.shelterwright.layouts.power.PowerGap;

/**
 * What one state asks of a supply and what there is.
 *
 * @param state name of the state
 * @param demand in the unit of the row
 * @param nominal the mean of it; {@code null} if not apt
 * @param capacity {@code null} if not known
 * @param what begins the finding, such as "The line L1 of Mains bears"
 * @param gaps what is missing
 */
record Measure(
        String state,
        double demand,
        @Nullable Double nominal,
        @Nullable Double capacity,
        String what,
        List<PowerGap> gaps) {
    /** The state that governs: one that breaks the capacity, else one with gaps, else the greatest use. */
    static Optional<Measure> governing(List<Measure> measures) {
        Measure governing = null;
        for (Measure measure : measures) {
            if (governing == null || measure.rank() > governing.rank()) {
                governing = measure;
            }
        }
        return Optional.ofNullable(governing);
    }

    private double rank() {
        return Rank.of(demand, capacity, !gaps.isEmpty());
    }

    /** The row of a demand that must not exceed its capacity. A known part that does is broken, whatever is missing. */
    Row atMost(RowDraft draft, String unit, int decimals, String mend) {
        draft.state(state);
        Double most = capacity;
        if (most == null || !gaps.isEmpty() && demand <= most) {
            return PowerLimit.gap(draft, gaps);
        }
        if (nominal != null) {
            draft.nominal(nominal);
        }
        if (demand > most) {
            draft.mend(mend);
        }
        return draft.atMost(demand, most, unit, Sentences.of(what, demand, most, unit, decimals));
    }
}

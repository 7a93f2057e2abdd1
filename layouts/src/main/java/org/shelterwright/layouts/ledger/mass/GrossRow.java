package org.shelterwright.layouts.ledger.mass;

import java.util.List;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.Extreme;
import org.shelterwright.layouts.state.Gap;

/** The row of a mass against a rating of which a share stays free. */
final class GrossRow {
    private GrossRow() {}

    /** A mass whose known part is too much is broken, whatever is missing. */
    static Row of(RowDraft draft, Scene scene, String what, Extreme most, double ratingKg, List<Gap> gaps) {
        double reserve = scene.rules().valueOr(Figure.MASS_RESERVE, 0);
        double capacityKg = ratingKg * (1 - reserve);
        double overKg = most.worst() - capacityKg;
        draft.state(most.state().text());
        if (!gaps.isEmpty() && overKg <= 0) {
            return GapRow.of(draft, gaps);
        }
        StringBuilder finding =
                new StringBuilder(what).append(" weighs at most ").append(Amounts.kg(most.worst()));
        finding.append(" of ").append(Amounts.kg(capacityKg));
        if (reserve > 0) {
            finding.append(" (rating ").append(Amounts.kg(ratingKg)).append(" less ");
            finding.append(Amounts.percent(reserve)).append(" reserve)");
        }
        if (overKg > 0) {
            finding.append(": ").append(Amounts.kg(overKg)).append(" too much");
            draft.mend("Take out at least " + Amounts.kg(overKg) + ", or choose one with a higher rating.");
        } else {
            finding.append(": ").append(Amounts.kg(-overKg)).append(" are left");
        }
        int toPlace = scene.toPlace().size();
        if (toPlace > 0) {
            finding.append(", without ").append(Wording.count(toPlace, "unit")).append(" still to place");
        }
        return draft.nominal(most.nominal())
                .atMost(most.worst(), capacityKg, "kg", finding.append('.').toString());
    }
}

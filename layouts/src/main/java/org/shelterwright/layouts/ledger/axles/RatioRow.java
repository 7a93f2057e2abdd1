package org.shelterwright.layouts.ledger.axles;

import java.util.List;
import java.util.Optional;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.mass.GapRow;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.Extreme;
import org.shelterwright.layouts.state.Gap;
import org.shelterwright.layouts.state.LoadStates;
import org.shelterwright.layouts.state.Mode;
import org.shelterwright.layouts.state.Quantity;

/** Rows of shares of loads. */
final class RatioRow {
    private RatioRow() {}

    /** A share of which at least the needed one must be there in every load state. */
    static Row atLeast(
            RowDraft draft, Scene scene, Quantity part, Quantity whole, List<Mode> modes, double needed, String what) {
        LoadStates states = LoadStates.of(scene);
        List<Gap> gaps = states.gaps(part, whole);
        if (!gaps.isEmpty()) {
            return GapRow.of(draft, gaps);
        }
        Optional<Extreme> least = states.leastRatio(part, whole, modes);
        if (least.isEmpty()) {
            return draft.notAssessed("Nothing stands on the wheels in some load state, so there is no share.");
        }
        Extreme found = least.get();
        if (found.worst() < needed) {
            draft.mend("Move mass towards these axles.");
        }
        return draft.state(found.state().text())
                .nominal(found.nominal())
                .atLeast(
                        needed,
                        found.worst(),
                        "share",
                        what + " at least " + Amounts.percent(found.worst()) + ", and must bear "
                                + Amounts.percent(needed) + ".");
    }
}

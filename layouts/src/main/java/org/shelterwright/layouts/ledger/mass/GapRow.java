package org.shelterwright.layouts.ledger.mass;

import java.util.List;
import java.util.Objects;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.state.Gap;

/** The row of a limit that figures are missing for. */
public final class GapRow {
    private GapRow() {}

    /** Names the first gap in full and counts the rest; each stands in full in the list of gaps. */
    public static Row of(RowDraft draft, List<Gap> gaps) {
        String more = gaps.size() > 1 ? " (and " + Wording.count(gaps.size() - 1, "gap") + " more)" : "";
        return draft.units(gaps.stream().map(Gap::unit).filter(Objects::nonNull).toList())
                .notAssessed(gaps.get(0).sentence() + more);
    }
}

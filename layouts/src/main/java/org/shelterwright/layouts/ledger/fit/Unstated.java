package org.shelterwright.layouts.ledger.fit;

import java.util.List;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.mend.Wording;

/** The row of a limit for which data of items are missing. */
final class Unstated {
    private Unstated() {}

    /** @param missing such as "the mass of Rack 2"; not empty */
    static Row row(RowDraft draft, List<String> missing) {
        String text = Wording.list(missing) + (missing.size() == 1 ? " is" : " are") + " not stated.";
        return draft.mend("State it in the catalog, or growth and uncertainty in a rule set or the brief.")
                .notAssessed(Character.toUpperCase(text.charAt(0)) + text.substring(1));
    }
}

package org.shelterwright.layouts.ledger.restraint;

import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Rows;

/** The row of a limit when no load case applies. */
final class NoLoadCase {
    private NoLoadCase() {}

    static Row row(Rows rows, Limit limit) {
        return rows.draft(limit)
                .mend("Choose a rule set with load cases in the brief, such as road-eu.")
                .notAssessed("No load case is set: no chosen rule set says by how much the load is pushed.");
    }
}

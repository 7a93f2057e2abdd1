package org.shelterwright.layouts.ledger.mend;

import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.rules.Figure;

/** The row of a limit whose figure no rule set and no brief sets. */
public final class UnsetFigure {
    private UnsetFigure() {}

    public static Row row(Rows rows, Limit limit, Figure figure) {
        return rows.draft(limit)
                .mend("Choose a rule set that sets " + figure.id() + ", or set it in the limits of the brief.")
                .notAssessed("No value is set for \"" + figure.meaning() + "\" (" + figure.id() + ").");
    }
}

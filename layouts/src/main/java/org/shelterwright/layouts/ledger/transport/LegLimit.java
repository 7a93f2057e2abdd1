package org.shelterwright.layouts.ledger.transport;

import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Stated;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.transport.scene.LegScene;

/** One thing that must hold on each leg of a journey. Holds no state; may be used by several threads. */
public abstract class LegLimit extends NamedLimit implements Stated {
    /**
     * Names a limit.
     *
     * @param name id within the subject, such as "outline"
     * @param heldSentence what the row of a leg says when the limit adds none
     */
    protected LegLimit(String name, String title, Source source, String heldSentence) {
        super("transport." + name, Subject.TRANSPORT, title, Severity.HARD, source, heldSentence);
    }

    /** Adds its rows for a leg, met ones too; none if it does not apply there. */
    public abstract void assess(LegScene leg, Rows rows);

    /** Begins a row of a leg. */
    protected final RowDraft draft(LegScene leg, Rows rows) {
        return rows.draft(this).state(leg.state());
    }

    /** The row of a figure that no rule set and no journey sets. */
    protected static Row unset(RowDraft draft, Figure figure) {
        return draft.mend("Choose a rule set that sets " + figure.id() + ", or set it in the limits of the journey.")
                .notAssessed("No value is set for \"" + figure.meaning() + "\" (" + figure.id() + ").");
    }

    /** Begins a row of a leg under a title of its own. */
    protected final RowDraft draft(LegScene leg, Rows rows, String title) {
        return rows.draft(this, title).state(leg.state());
    }
}

package org.shelterwright.layouts.ledger.racks;

import java.util.List;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.inside.InRack;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.Scene;

/** A limit of each bay that holds pieces. Does not apply where none does. */
abstract class BayLimit extends NamedLimit implements Limit.OfWhole {
    BayLimit(String id, String title, Severity severity, Source source) {
        super(id, Subject.RACKS, title, severity, source, "No bay holds rack-mounted pieces.");
    }

    @Override
    public final void assess(Scene scene, Rows rows) {
        for (FilledBay bay : FilledBay.of(scene)) {
            assess(scene, bay, rows);
        }
    }

    abstract void assess(Scene scene, FilledBay bay, Rows rows);

    /** Begins the row of a bay. */
    final RowDraft draft(Rows rows, FilledBay bay) {
        return rows.draft(this, bay.titled(title()))
                .units(bay.unit())
                .place(bay.placed(bay.bay().room()));
    }

    /** Begins the row of a bay that shows one of its pieces. */
    final RowDraft draft(Rows rows, FilledBay bay, InRack piece) {
        return rows.draft(this, bay.titled(title())).units(bay.unit()).place(bay.placed(piece.box()));
    }

    /** A row that names what is not stated of some pieces. */
    static Row missing(RowDraft draft, String what, List<String> names) {
        return draft.mend("State it in the catalog entry of the piece.")
                .notAssessed("The " + what + " of " + Wording.list(names) + (names.size() == 1 ? " is" : " are")
                        + " not stated.");
    }
}

package org.shelterwright.layouts.ledger.stowage;

import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.inside.InPlace;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.scene.Scene;

/** A limit of each stowage place that holds pieces. Does not apply where none does. */
abstract class PlaceLimit extends NamedLimit implements Limit.OfWhole {
    PlaceLimit(String id, String title, Severity severity, Source source) {
        super(id, Subject.STOWAGE, title, severity, source, "No stowage place holds loose pieces.");
    }

    @Override
    public final void assess(Scene scene, Rows rows) {
        for (FilledPlace place : FilledPlace.of(scene)) {
            assess(scene, place, rows);
        }
    }

    abstract void assess(Scene scene, FilledPlace place, Rows rows);

    /** Begins the row of a place. */
    final RowDraft draft(Rows rows, FilledPlace place) {
        return rows.draft(this, title() + ", " + place.name())
                .units(place.unit())
                .place(place.placed(place.stowage().inside(), Situation.ON_THE_ROAD));
    }

    /** Begins the row of a place that shows one of its pieces. */
    final RowDraft draft(Rows rows, FilledPlace place, InPlace piece) {
        return rows.draft(this, title() + ", " + place.name())
                .units(place.unit())
                .place(place.placed(piece.box(), Situation.ON_THE_ROAD));
    }
}

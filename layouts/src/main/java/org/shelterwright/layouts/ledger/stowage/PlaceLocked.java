package org.shelterwright.layouts.ledger.stowage;

import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.Scene;

/**
 * Every place with pieces in it states what keeps it closed on the road.
 *
 * <p>Source: KKK-A-1822E 3.11.1.1, everything in closed compartments or fastened.
 */
final class PlaceLocked extends PlaceLimit {
    PlaceLocked() {
        super(
                "stowage.locked",
                "Places locked on the road",
                Severity.HARD,
                Source.seen("KKK-A-1822E", "3.11.1.1, everything in closed compartments or fastened"));
    }

    @Override
    void assess(Scene scene, FilledPlace place, Rows rows) {
        String lock = place.stowage().lock();
        RowDraft draft = draft(rows, place).state(Wording.situation(Situation.ON_THE_ROAD));
        rows.add(
                lock != null
                        ? draft.held("The " + place.name() + " is kept closed by: " + lock + ".")
                        : draft.mend("Give the lock of the place in item "
                                        + place.unit().item().id() + ".")
                                .notAssessed("What keeps the " + place.name() + " closed on the road is not stated."));
    }
}

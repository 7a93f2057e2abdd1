package org.shelterwright.layouts.ledger.racks;

import java.util.List;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.inside.InRack;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.Scene;

/**
 * Every piece that slides out states what keeps it in on the road.
 *
 * <p>Source: common practice.
 */
final class SlidesSecured extends BayLimit {
    SlidesSecured() {
        super(
                "racks.secured",
                "Slide-outs secured on the road",
                Severity.HARD,
                Source.commonPractice("Slide-outs are held on the road"));
    }

    @Override
    void assess(Scene scene, FilledBay bay, Rows rows) {
        List<String> open = bay.pieces().stream()
                .filter(piece -> piece.mount().slideTravel() != null && piece.mount().securedBy() == null)
                .map(InRack::name)
                .toList();
        RowDraft draft = draft(rows, bay).state(Wording.situation(Situation.ON_THE_ROAD));
        rows.add(
                open.isEmpty()
                        ? draft.held("Every slide-out in " + bay.name() + " is held on the road.")
                        : draft.mend("State it in securedBy of the piece, such as two captive screws.")
                                .notAssessed("What keeps " + Wording.list(open) + " in " + bay.name()
                                        + " on the road is not stated."));
    }
}

package org.shelterwright.layouts.ledger.stowage;

import java.util.List;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.inside.InPlace;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.Scene;

/**
 * No two pieces in a place fill the same space. Demand: how deep the worst two overlap (mm), of 0.
 *
 * <p>Source: geometry.
 */
final class NoOverlap extends PlaceLimit {
    NoOverlap() {
        super(
                "stowage.overlap",
                "Pieces that overlap",
                Severity.HARD,
                Source.stated("Catalog", "sizes of the pieces"));
    }

    @Override
    void assess(Scene scene, FilledPlace place, Rows rows) {
        InPlace first = null;
        InPlace second = null;
        int most = 0;
        List<InPlace> pieces = place.pieces();
        for (int i = 0; i < pieces.size(); i++) {
            Box box = pieces.get(i).box();
            for (int j = 0; j < i; j++) {
                int depth = box.depth(pieces.get(j).box());
                if (depth > most) {
                    most = depth;
                    first = pieces.get(j);
                    second = pieces.get(i);
                }
            }
        }
        rows.add(
                first == null || second == null
                        ? draft(rows, place).held("No two pieces in the " + place.name() + " overlap.")
                        : draft(rows, place, second)
                                .mend("Move " + second.name() + " by at least " + Wording.mm(most) + ".")
                                .atMost(
                                        most / (double) Lengths.MM,
                                        0,
                                        "mm",
                                        first.name() + " and " + second.name() + " in the " + place.name()
                                                + " overlap by " + Wording.mm(most) + "."));
    }
}

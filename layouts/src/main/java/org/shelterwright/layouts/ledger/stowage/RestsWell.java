package org.shelterwright.layouts.ledger.stowage;

import java.util.OptionalDouble;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.inside.InPlace;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.ledger.mend.UnsetFigure;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;

/**
 * Each piece rests on enough of its base: on the bottom of its place or on others, at least a set share. The worst governs.
 *
 * <p>Source: common practice, editable.
 */
final class RestsWell extends PlaceLimit {
    RestsWell() {
        super(
                "stowage.rest",
                "Pieces that rest",
                Severity.HARD,
                Source.commonPractice("A piece that lies on others rests on most of its base"));
    }

    @Override
    void assess(Scene scene, FilledPlace place, Rows rows) {
        OptionalDouble least = scene.rules().value(Figure.STOWAGE_REST_SHARE);
        if (least.isEmpty()) {
            rows.add(UnsetFigure.row(rows, this, Figure.STOWAGE_REST_SHARE));
            return;
        }
        InPlace worst = place.pieces().get(0);
        double lowest = 2;
        for (InPlace piece : place.pieces()) {
            double share = Resting.of(piece, place).share();
            if (share < lowest) {
                lowest = share;
                worst = piece;
            }
        }
        if (lowest >= 1) {
            rows.add(draft(rows, place).held("Every piece in the " + place.name() + " rests on its whole base."));
            return;
        }
        rows.add(draft(rows, place, worst)
                .mend("Lay it on the bottom of the place, or on pieces that are level.")
                .atLeast(
                        least.getAsDouble(),
                        lowest,
                        "share",
                        worst.name() + " in the " + place.name() + " rests on " + Amounts.percent(lowest)
                                + " of its base; at least " + Amounts.percent(least.getAsDouble()) + "."));
    }
}

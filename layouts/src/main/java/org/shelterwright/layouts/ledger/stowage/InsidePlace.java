package org.shelterwright.layouts.ledger.stowage;

import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.inside.InPlace;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.Scene;

/**
 * Each piece lies whole inside its place. Demand: how far the worst one stands out (mm), of 0.
 *
 * <p>Source: geometry; the inside of the place in the catalog.
 */
final class InsidePlace extends PlaceLimit {
    InsidePlace() {
        super(
                "stowage.inside",
                "Pieces inside their place",
                Severity.HARD,
                Source.stated("Catalog", "inside of the stowage places"));
    }

    @Override
    void assess(Scene scene, FilledPlace place, Rows rows) {
        InPlace worst = null;
        int most = 0;
        for (InPlace piece : place.pieces()) {
            int out = out(piece.box(), place.stowage().inside());
            if (out > most) {
                most = out;
                worst = piece;
            }
        }
        rows.add(
                worst == null
                        ? draft(rows, place).held("Every piece lies inside the " + place.name() + ".")
                        : draft(rows, place, worst)
                                .mend("Lay it another way, or put it into a larger place.")
                                .atMost(
                                        most / (double) Lengths.MM,
                                        0,
                                        "mm",
                                        worst.name() + " stands out of the " + place.name() + " by "
                                                + Wording.mm(most) + "."));
    }

    private static int out(Box piece, Box inside) {
        int most = 0;
        for (Axis axis : Axis.values()) {
            most = Math.max(most, Math.max(inside.low(axis) - piece.low(axis), piece.high(axis) - inside.high(axis)));
        }
        return most;
    }
}

package org.shelterwright.layouts.ledger.transport.place;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.ledger.transport.LegLimit;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;
import org.shelterwright.layouts.transport.scene.Resting;

/**
 * What stands on a piece is within its stacking strength; the mass above is shared among those below by the area with which it rests
 * on each, from the top down. Nothing stands on a fragile one. Source: the data of the crate.
 */
final class Stacking extends LegLimit {
    Stacking() {
        super(
                "stacking",
                "Stacking",
                Source.stated("data of the crate", "stacking strength"),
                "Nothing stands on anything else.");
    }

    @Override
    public void assess(LegScene leg, Rows rows) {
        for (PlacedLoad load : leg.loads()) {
            Map<String, Double> above = Resting.massesKg(load);
            for (PlacedPiece piece : load.pieces()) {
                double kg = above.getOrDefault(piece.id(), 0.0);
                if (kg > 0) {
                    row(leg, load, piece, kg, rows);
                }
            }
        }
    }

    private void row(LegScene leg, PlacedLoad load, PlacedPiece piece, double kg, Rows rows) {
        var draft = draft(leg, rows, "Stacking on " + piece.name())
                .units(List.of(piece.id(), load.id()))
                .place(piece.box());
        Optional<Double> bears = piece.shape().crate() == null
                ? Optional.empty()
                : piece.shape().crate().bearsKg();
        if (bears.isEmpty()) {
            rows.add(draft.notAssessed(piece.name() + " carries " + Amounts.kg(kg)
                    + " but states no stacking strength. Give stackingKg of piece " + piece.id() + "."));
            return;
        }
        rows.add(draft.mend(kg > bears.get() ? "Put it on top, or take something off it." : null)
                .atMost(
                        kg,
                        bears.get(),
                        "kg",
                        piece.name() + " on " + load.name() + " carries " + Amounts.kg(kg)
                                + (bears.get() == 0 ? " and is fragile." : " of " + Amounts.kg(bears.get()) + ".")));
    }
}

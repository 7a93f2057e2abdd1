package org.shelterwright.layouts.ledger.transport.place;

import java.util.List;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.transport.LegLimit;
import org.shelterwright.layouts.transport.Piece;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;

/** Pieces that must ride together do, and those that must not do not. Source: the journey. */
final class Companions extends LegLimit {
    Companions() {
        super(
                "together-apart",
                "Together and apart",
                Source.stated("the journey", "together, apart"),
                "Everything rides with what it should.");
    }

    @Override
    public void assess(LegScene leg, Rows rows) {
        for (PlacedLoad load : leg.loads()) {
            for (Piece piece : leg.journey().journey().pieces()) {
                if (load.piece(piece.id()).isPresent()) {
                    piece.apart().stream()
                            .filter(other -> load.piece(other).isPresent())
                            .forEach(other -> rows.add(row(leg, load, piece, other, false, rows)));
                    piece.together().stream()
                            .filter(other -> load.piece(other).isEmpty())
                            .forEach(other -> rows.add(row(leg, load, piece, other, true, rows)));
                }
            }
        }
    }

    private Row row(LegScene leg, PlacedLoad load, Piece piece, String other, boolean together, Rows rows) {
        String name = leg.journey().journey().nameOf(other);
        return draft(leg, rows)
                .units(List.of(piece.id(), other, load.id()))
                .mend(together ? "Put both on one car." : "Put one of them on another car.")
                .atMost(
                        1,
                        0,
                        "",
                        piece.name() + (together ? " must ride with " : " may not ride with ") + name
                                + (together ? ", which is not on " + load.name() : "; both are on " + load.name())
                                + ".");
    }
}

package org.shelterwright.layouts.ledger.transport.burden;

import java.util.List;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.ledger.transport.LegLimit;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;
import org.shelterwright.layouts.transport.scene.Wheel;

/**
 * Each axle of a vehicle on a car is within what its floor bears under one axle. Source: the sheet of the car; ISO 1496-1 for
 * containers, whose floors are tested with an axle of 5 460 kg (older) or 7 260 kg (newer; seen).
 */
final class FloorAxle extends LegLimit {
    FloorAxle() {
        super(
                "floor-axle",
                "Axle on the floor",
                Source.seen("ISO 1496-1", "test 8: floor with an axle"),
                "No vehicle stands on a car of this leg.");
    }

    @Override
    public void assess(LegScene leg, Rows rows) {
        for (PlacedLoad load : leg.loads()) {
            for (PlacedPiece piece : load.pieces()) {
                if (piece.shape().wheeled()) {
                    assess(leg, load, piece, rows);
                }
            }
        }
    }

    private void assess(LegScene leg, PlacedLoad load, PlacedPiece piece, Rows rows) {
        RowDraft draft = draft(leg, rows, "Axle on the floor, " + piece.name())
                .units(List.of(piece.id(), load.id()))
                .source(load.car().source());
        Double rating = load.car().floor().axleKg();
        Wheel worst = piece.shape().wheels().stream()
                .reduce((a, b) -> a.loadKg() >= b.loadKg() ? a : b)
                .orElseThrow();
        double kg = piece.shape().mostKg(worst);
        if (rating == null) {
            rows.add(draft.notAssessed("The floor of the " + load.car().name()
                    + " states no axle load. Give \"axleKg\" in the floor of car "
                    + load.car().id() + "."));
        } else if (piece.shape().unknown().isPresent() || kg <= 0) {
            rows.add(draft.notAssessed(
                    piece.shape().unknown().orElse("The axle loads of " + piece.name() + " cannot be told.")));
        } else {
            rows.add(draft.mend(kg > rating ? "Spread its wheels on planks or steel, or take a stronger car." : null)
                    .atMost(
                            kg,
                            rating,
                            "kg",
                            "The " + worst.name() + " of " + piece.name() + " bears " + Amounts.kg(kg)
                                    + " on the floor of " + load.name() + ", which takes " + Amounts.kg(rating) + "."));
        }
    }
}

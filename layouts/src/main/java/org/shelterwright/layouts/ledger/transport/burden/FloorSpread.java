package org.shelterwright.layouts.ledger.transport.burden;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.ledger.transport.LegLimit;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;
import org.shelterwright.layouts.transport.scene.Resting;

/**
 * What stands on a length of a car is within what that length bears: the concentrated load of the sheet for the length of its foot, or
 * the load per metre times the length where that is more or the sheet has none for so short a length. What is stacked counts with what
 * it stands on.
 * Source: the sheet of the car; UIC Loading Guidelines, volume 1, 3.3 (concentrated loads; from memory).
 */
final class FloorSpread extends LegLimit {
    FloorSpread() {
        super(
                "concentrated-load",
                "Concentrated load",
                Source.fromMemory("UIC Loading Guidelines, volume 1", "3.3: concentrated loads of the wagon's sheet"),
                "No load goes on this leg.");
    }

    @Override
    public void assess(LegScene leg, Rows rows) {
        for (PlacedLoad load : leg.loads()) {
            Map<String, Double> onTop = Resting.massesKg(load);
            for (PlacedPiece piece : load.pieces()) {
                if (piece.box().z0() == 0) {
                    assess(leg, load, piece, onTop.getOrDefault(piece.id(), 0.0), rows);
                }
            }
        }
    }

    private void assess(LegScene leg, PlacedLoad load, PlacedPiece piece, double onTopKg, Rows rows) {
        RowDraft draft = draft(leg, rows, "Concentrated load, " + piece.name())
                .units(List.of(piece.id(), load.id()))
                .source(load.car().source());
        Rect foot = piece.foot();
        int length = foot.x1() - foot.x0();
        Double bears = bearsKg(load, length);
        if (piece.shape().massKg() == null) {
            rows.add(draft.notAssessed(piece.shape().unknown().orElse("Its mass is not known.")));
            return;
        }
        if (bears == null) {
            rows.add(draft.notAssessed("The floor of the " + load.car().name() + " states no load for a length of "
                    + Wording.mm(length) + ". Give \"concentrated\" or \"perMetreKg\" in car "
                    + load.car().id() + "."));
            return;
        }
        double kg = piece.shape().mostKg() + onTopKg;
        rows.add(draft.mend(kg > bears ? "Set it on bedding beams that spread it, or take a stronger car." : null)
                .atMost(
                        kg,
                        bears,
                        "kg",
                        piece.name() + " puts " + Amounts.kg(kg) + " on " + Wording.mm(length) + " of " + load.name()
                                + ", which bear " + Amounts.kg(bears) + "."));
    }

    private static @Nullable Double bearsKg(PlacedLoad load, int length) {
        Double concentrated = load.car().floor().concentratedKg(length);
        Double perMetre = load.car().floor().perMetreKg();
        Double spread = perMetre == null ? null : Double.valueOf(perMetre * Lengths.metres(length));
        if (concentrated == null || spread == null) {
            return concentrated == null ? spread : concentrated;
        }
        return Math.max(concentrated, spread);
    }
}

package org.shelterwright.layouts.ledger.racks;

import java.util.List;
import java.util.OptionalDouble;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.inside.InRack;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.ledger.mend.UnsetFigure;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.MassModel;

/**
 * Each piece from a set mass on has its centre in the lower half of its bay. The highest of them governs.
 *
 * <p>Source: installation guides of racks, heaviest at the bottom, install in the lower half (common practice, editable).
 */
final class HeavyLow extends BayLimit {
    HeavyLow() {
        super(
                "racks.heavy-low",
                "Heaviest pieces low",
                Severity.MEDIUM,
                Source.commonPractice("Heaviest at the bottom, in the lower half of the rack"));
    }

    @Override
    void assess(Scene scene, FilledBay bay, Rows rows) {
        OptionalDouble heavy = scene.rules().value(Figure.RACK_HEAVY);
        MassModel model = new MassModel(scene.rules());
        List<String> missing = bay.withoutMass(model);
        if (heavy.isEmpty()) {
            rows.add(UnsetFigure.row(rows, this, Figure.RACK_HEAVY));
            return;
        }
        if (!missing.isEmpty()) {
            rows.add(missing(draft(rows, bay), "mass", missing));
            return;
        }
        InRack highest = null;
        for (InRack piece : bay.pieces()) {
            boolean counts = Masses.worstKg(model, piece).orElse(0) >= heavy.getAsDouble();
            if (counts && (highest == null || piece.centreHeight() > highest.centreHeight())) {
                highest = piece;
            }
        }
        if (highest == null) {
            rows.add(draft(rows, bay).held("No piece in " + bay.name() + " weighs "
                    + Amounts.kg(heavy.getAsDouble()) + " or more."));
            return;
        }
        double at = highest.centreHeight() / (double) Lengths.MM;
        double half = bay.bay().height() / 2.0 / Lengths.MM;
        rows.add(draft(rows, bay, highest)
                .mend("Put " + highest.name() + " lower.")
                .atMost(
                        at,
                        half,
                        "mm",
                        highest.name() + " has its centre " + Amounts.number(at, 0) + " mm above the lowest unit of "
                                + bay.name() + "; the middle is at " + Amounts.number(half, 0) + " mm."));
    }
}

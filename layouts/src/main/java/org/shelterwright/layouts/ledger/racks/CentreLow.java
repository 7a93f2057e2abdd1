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
 * The common centre of mass of the pieces lies low in the bay: Σmz/Σm ≤ s H, with H the height of its units.
 *
 * <p>Source: installation guides of racks, heavy pieces in the lower half (common practice, editable).
 */
final class CentreLow extends BayLimit {
    CentreLow() {
        super(
                "racks.centre",
                "Centre of mass in the rack",
                Severity.MEDIUM,
                Source.commonPractice("The centre of mass of a rack's content lies in its lower half"));
    }

    @Override
    void assess(Scene scene, FilledBay bay, Rows rows) {
        MassModel model = new MassModel(scene.rules());
        OptionalDouble share = scene.rules().value(Figure.RACK_CENTRE_SHARE);
        List<String> missing = bay.withoutMass(model);
        if (share.isEmpty()) {
            rows.add(UnsetFigure.row(rows, this, Figure.RACK_CENTRE_SHARE));
            return;
        }
        if (!missing.isEmpty()) {
            rows.add(missing(draft(rows, bay), "mass", missing));
            return;
        }
        double kg = 0;
        double moment = 0;
        for (InRack piece : bay.pieces()) {
            double own = Masses.worstKg(model, piece).orElse(0);
            kg += own;
            moment += own * piece.centreHeight();
        }
        double height = kg == 0 ? 0 : moment / kg / Lengths.MM;
        double most = share.getAsDouble() * bay.bay().height() / Lengths.MM;
        rows.add(draft(rows, bay)
                .mend("Put the heaviest pieces lower.")
                .atMost(
                        height,
                        most,
                        "mm",
                        "The centre of mass in " + bay.name() + " lies " + Amounts.number(height, 0)
                                + " mm above its lowest unit; at most " + Amounts.number(most, 0) + " mm."));
    }
}

package org.shelterwright.layouts.ledger.racks;

import java.util.OptionalDouble;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.ledger.mend.UnsetFigure;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;

/**
 * A share of the height units of a bay stays free: ΣU ≤ (1 − r) U, blanking panels not counted.
 *
 * <p>Source: common practice, editable.
 */
final class UnitsFree extends BayLimit {
    UnitsFree() {
        super(
                "racks.units-free",
                "Height units",
                Severity.MEDIUM,
                Source.commonPractice("Some height units of a rack stay free for what comes later"));
    }

    @Override
    void assess(Scene scene, FilledBay bay, Rows rows) {
        OptionalDouble share = scene.rules().value(Figure.RACK_FREE_SHARE);
        if (share.isEmpty()) {
            rows.add(UnsetFigure.row(rows, this, Figure.RACK_FREE_SHARE));
            return;
        }
        int taken = bay.working().stream().mapToInt(one -> one.mount().units()).sum();
        double most = Math.floor((1 - share.getAsDouble()) * bay.bay().units() + 1e-9);
        rows.add(draft(rows, bay)
                .mend("Put a piece into another rack, or take a rack with more units.")
                .atMost(
                        taken,
                        most,
                        "U",
                        "Pieces take " + taken + " U of the " + bay.bay().units() + " U of " + bay.name() + "; "
                                + Amounts.number(most, 0) + " U may be taken."));
    }
}

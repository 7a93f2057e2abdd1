package org.shelterwright.layouts.ledger.racks;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.shelterwright.catalog.piece.RackSupport;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.inside.InRack;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.ledger.mend.UnsetFigure;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.MassModel;

/**
 * A piece from a set mass on, or one that needs it, is held at the rear too: the bay has rear uprights. Demand: number of pieces
 * that are not, of 0.
 *
 * <p>Source: common practice, editable.
 */
final class RearHold extends BayLimit {
    RearHold() {
        super(
                "racks.rear-hold",
                "Heavy pieces held at the rear",
                Severity.HARD,
                Source.commonPractice("A heavy piece does not hang on its panel alone"));
    }

    @Override
    void assess(Scene scene, FilledBay bay, Rows rows) {
        OptionalDouble from = scene.rules().value(Figure.RACK_REAR_HOLD);
        if (from.isEmpty()) {
            rows.add(UnsetFigure.row(rows, this, Figure.RACK_REAR_HOLD));
            return;
        }
        MassModel model = new MassModel(scene.rules());
        List<String> unknown = new ArrayList<>();
        List<String> hanging = new ArrayList<>();
        for (InRack piece : bay.pieces()) {
            RackSupport support = piece.mount().support();
            OptionalDouble kg = Masses.worstKg(model, piece);
            boolean wants = support == RackSupport.FRONT_AND_REAR || support == RackSupport.SHELF;
            if (support == null || kg.isEmpty()) {
                unknown.add(piece.name());
            } else if (wants && bay.bay().railDepth() == null
                    || !wants && kg.getAsDouble() >= from.getAsDouble()) {
                hanging.add(piece.name());
            }
        }
        RowDraft draft = draft(rows, bay);
        if (!unknown.isEmpty()) {
            rows.add(missing(draft, "mass or support", unknown));
        } else if (hanging.isEmpty()) {
            rows.add(draft.held("Every heavy piece in " + bay.name() + " is held at the rear too."));
        } else {
            rows.add(draft.mend("Give them rails or a shelf between front and rear uprights.")
                    .atMost(
                            hanging.size(),
                            0,
                            "pieces",
                            Wording.list(hanging) + " in " + bay.name() + (hanging.size() == 1 ? " hangs" : " hang")
                                    + " on the front uprights alone; from " + Amounts.kg(from.getAsDouble())
                                    + " on a piece is held at the rear too."));
        }
    }
}

package org.shelterwright.layouts.ledger.racks;

import java.util.OptionalDouble;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.piece.AccessNeed;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.inside.InRack;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.ledger.mend.UnsetFigure;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;

/**
 * What is looked at while working sits between the elbow and the eye of a standing person, and what is operated by hand within
 * reach; the height of the middle of the panel above the floor counts. The piece that lies farthest out governs.
 *
 * <p>Source: NUREG-0700 Rev. 3, table 11.4 (5th percentile woman: standing elbow 97.5 cm, eye 150.1 cm); both editable.
 */
final class AtHeight extends BayLimit {
    AtHeight() {
        super(
                "racks.height",
                "Pieces at their height",
                Severity.MEDIUM,
                Source.seen("NUREG-0700 Rev. 3", "table 11.4, elbow and eye height of the 5th percentile woman"));
    }

    private record Off(InRack piece, double at, double bound, boolean over) {
        double share() {
            return over ? at / bound : bound / Math.max(1, at);
        }
    }

    @Override
    void assess(Scene scene, FilledBay bay, Rows rows) {
        Off worst = null;
        for (InRack piece : bay.working()) {
            AccessNeed need = piece.mount().access();
            if (need == null || need == AccessNeed.RARE) {
                continue;
            }
            boolean eye = need == AccessNeed.EYE_LEVEL;
            Figure lowFigure = eye ? Figure.RACK_EYE_LOW : Figure.RACK_HAND_LOW;
            Figure highFigure = eye ? Figure.RACK_EYE_HIGH : Figure.RACK_HAND_HIGH;
            OptionalDouble low = scene.rules().value(lowFigure);
            OptionalDouble high = scene.rules().value(highFigure);
            if (low.isEmpty() || high.isEmpty()) {
                rows.add(UnsetFigure.row(rows, this, low.isEmpty() ? lowFigure : highFigure));
                return;
            }
            Box panel = bay.placed(piece.box());
            double at = (panel.z0() + panel.z1()) / 2.0 / Lengths.MM;
            Off over = new Off(piece, at, high.getAsDouble(), true);
            Off under = new Off(piece, at, low.getAsDouble(), false);
            Off off = over.share() > under.share() ? over : under;
            worst = worst == null || off.share() > worst.share() ? off : worst;
        }
        if (worst == null) {
            rows.add(draft(rows, bay).held("No piece in " + bay.name() + " is read or operated while working."));
            return;
        }
        RowDraft draft = draft(rows, bay, worst.piece()).state(Wording.situation(Situation.ON_STATION));
        String text = worst.piece().name() + " in " + bay.name() + " sits " + Amounts.number(worst.at(), 0)
                + " mm above the floor; it should sit at " + (worst.over() ? "most " : "least ")
                + Amounts.number(worst.bound(), 0) + " mm.";
        rows.add(
                worst.over()
                        ? draft.mend("Put it lower.").atMost(worst.at(), worst.bound(), "mm", text)
                        : draft.mend("Put it higher.").atLeast(worst.bound(), worst.at(), "mm", text));
    }
}

package org.shelterwright.layouts.ledger.lifting;

import java.util.Optional;
import org.shelterwright.catalog.body.Provision.Use;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rule;
import org.shelterwright.layouts.scene.Scene;

/** The centre of mass of the filled body lies inside the base of its stands, at least {@code lifting.stand-margin} from its edges. */
final class StandBase extends StoodLimit {
    StandBase() {
        super(
                "lifting.stand-base",
                "Centre of mass inside the base of the stands",
                Source.commonPractice("A body tips over the line through two stands"),
                Use.STAND,
                "The body has no pads for stands.");
    }

    @Override
    Row row(RowDraft draft, Scene scene, LiftedMass lifted) {
        Optional<FourProvisions> pads = FourProvisions.pads(scene.body());
        Optional<Rule> rule = scene.rules().rule(Figure.STAND_MARGIN);
        if (pads.isEmpty() || rule.isEmpty()) {
            return draft.mend("Give four pads in the body, and a rule set that has the figure.")
                    .notAssessed(
                            pads.isEmpty()
                                    ? "The pads for stands are not four at the corners of a level rectangle."
                                    : "No value is set for \"" + Figure.STAND_MARGIN.meaning() + "\" ("
                                            + Figure.STAND_MARGIN.id() + ").");
        }
        FourPoints points = pads.get().points();
        double along = Math.min(lifted.x()[0] - points.x0(), points.x1() - lifted.x()[1]);
        double across = Math.min(lifted.y()[0] - points.y0(), points.y1() - lifted.y()[1]);
        double inside = Math.min(along, across);
        double margin = rule.get().value() / 1000;
        if (inside < margin) {
            draft.mend("Move mass " + (along < across ? "along" : "across") + " the body by a moment of at least "
                    + Amounts.number(lifted.massKg() * (margin - inside), 0) + " kg·m towards its middle.");
        }
        return draft.source(rule.get().source())
                .atLeast(
                        1000 * margin,
                        1000 * inside,
                        "mm",
                        inside < 0
                                ? "Off its carrier the centre of mass lies up to " + Amounts.mm(-inside)
                                        + " outside the base of the stands: the body tips."
                                : "Off its carrier the centre of mass stays " + Amounts.mm(inside)
                                        + " inside the base of the stands.");
    }
}

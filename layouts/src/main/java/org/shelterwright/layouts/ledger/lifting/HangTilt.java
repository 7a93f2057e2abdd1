package org.shelterwright.layouts.ledger.lifting;

import java.util.Optional;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rule;
import org.shelterwright.layouts.scene.Scene;

/**
 * On four equal legs the body hangs nearly level: {@code atan(e / (H + z_eye − z)) ≤ lifting.tilt}, with the offset e of the centre
 * of mass from the middle of the eyes, its height z, and the height H of the hook above the eyes.
 */
final class HangTilt extends LiftLimit {
    HangTilt() {
        super(
                "lifting.tilt",
                "Tilt on equal sling legs",
                Source.commonPractice("A hanging body turns until its centre of mass is under the hook"));
    }

    @Override
    Row row(RowDraft draft, Scene scene, LiftPlan plan) {
        Optional<Rule> rule = scene.rules().rule(Figure.LIFT_TILT);
        if (rule.isEmpty()) {
            return draft.mend("Choose a rule set that sets it, or set it in the brief.")
                    .notAssessed("No value is set for \"" + Figure.LIFT_TILT.meaning() + "\" (" + Figure.LIFT_TILT.id()
                            + ").");
        }
        double allowed = rule.get().value();
        if (plan.tilt() > allowed) {
            draft.mend(
                    "Make the legs of unequal length, with the hook above the centre of mass, or move mass towards the"
                            + " middle of the eyes.");
        }
        return draft.source(rule.get().source())
                .atMost(
                        plan.tilt(),
                        allowed,
                        "°",
                        "On equal legs the body hangs " + Amounts.number(plan.tilt(), 1)
                                + "° out of level, with its centre of mass up to " + Amounts.mm(plan.offM())
                                + " off the middle of the eyes; allowed are " + Amounts.number(allowed, 1) + "°.");
    }
}

package org.shelterwright.layouts.ledger.lifting;

import java.util.Optional;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rule;
import org.shelterwright.layouts.scene.Scene;

/** The flattest sling leg is steep enough: {@code θ ≥ lifting.least-angle}, with the hook above the centre of mass. */
final class LegAngle extends LiftLimit {
    LegAngle() {
        super(
                "lifting.leg-angle",
                "Angle of the sling legs",
                Source.seen("ASME B30.9, 29 CFR 1910.184", "no leg below 30° above the level"));
    }

    @Override
    Row row(RowDraft draft, Scene scene, LiftPlan plan) {
        Optional<Rule> rule = scene.rules().rule(Figure.SLING_LEAST_ANGLE);
        if (rule.isEmpty()) {
            return draft.mend("Choose a rule set that sets it, or set it in the brief.")
                    .notAssessed("No value is set for \"" + Figure.SLING_LEAST_ANGLE.meaning() + "\" ("
                            + Figure.SLING_LEAST_ANGLE.id() + ").");
        }
        double needed = rule.get().value();
        if (plan.leastAngle() < needed) {
            draft.mend("Take longer sling legs.");
        }
        return draft.source(rule.get().source())
                .atLeast(
                        needed,
                        plan.leastAngle(),
                        "°",
                        "The flattest leg rises at " + Amounts.number(plan.leastAngle(), 1)
                                + "°, with the hook " + Amounts.mm(plan.hookHeight()) + " above the eyes; needed are "
                                + Amounts.number(needed, 1) + "°.");
    }
}

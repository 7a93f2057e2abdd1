package org.shelterwright.layouts.ledger.lifting;

import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mass.GapRow;
import org.shelterwright.layouts.scene.Scene;

/** A limit on the plan by which the filled body is lifted. */
abstract class LiftLimit extends NamedLimit implements Limit.OfTotals {
    LiftLimit(String id, String title, Source source) {
        super(id, Subject.LIFTING, title, Severity.HARD, source, "The body is not lifted.");
    }

    abstract Row row(RowDraft draft, Scene scene, LiftPlan plan);

    @Override
    public void assess(Scene scene, Rows rows) {
        LiftPlan.Made made = LiftPlan.made(scene);
        LiftPlan plan = made.plan();
        RowDraft draft = rows.draft(this);
        if (plan != null) {
            rows.add(row(draft.state(plan.state()), scene, plan));
        } else if (!made.gaps().isEmpty()) {
            rows.add(GapRow.of(draft, made.gaps()));
        } else {
            rows.add(draft.mend("Give them in the body, or choose a rule set that has the figures.")
                    .notAssessed(made.missing()));
        }
    }
}

package org.shelterwright.layouts.ledger.mass;

import java.util.List;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.Extreme;
import org.shelterwright.layouts.state.Gap;
import org.shelterwright.layouts.state.Influence;
import org.shelterwright.layouts.state.LoadStates;
import org.shelterwright.layouts.state.Quantity;

/**
 * The filled body weighs no more than its gross rating less the reserve: {@code Σ (m (1 + g) + u) + tanks ≤ R (1 − r)}, with
 * growth g, uncertainty u and reserve share r.
 *
 * <p>Source: the gross rating of the body in the catalog.
 */
final class BodyGrossMass extends NamedLimit implements Limit.OfTotals {
    private static final Quantity TOTAL = Quantity.ofBody(Influence.MASS);

    BodyGrossMass() {
        super(
                "mass.body-gross",
                Subject.MASS,
                "Gross mass of the body",
                Severity.HARD,
                Source.stated("Catalog", "gross rating of the body"),
                "The filled body is within its rating.");
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        LoadStates states = LoadStates.of(scene);
        RowDraft draft = rows.draft(this);
        Double ratingKg = scene.body().grossRatingKg();
        Extreme most = states.most(TOTAL, states.modes());
        if (ratingKg == null) {
            rows.add(draft.notAssessed("The body " + scene.body().name() + " has no gross rating. Give grossRatingKg in"
                    + " body " + scene.body().id() + ". It weighs " + Amounts.kg(most.worst()) + " when filled."));
            return;
        }
        List<Gap> gaps = states.gaps(TOTAL);
        rows.add(GrossRow.of(draft, scene, "The filled body", most, ratingKg, gaps));
    }
}

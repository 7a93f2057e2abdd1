package org.shelterwright.layouts.ledger.mass;

import java.util.List;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.Gap;
import org.shelterwright.layouts.state.LoadStates;

/**
 * The to-do list of a layout: each figure of mass that is missing, one row each. None of them is ever taken for zero by a row
 * that says "met".
 */
final class DataGaps extends NamedLimit implements Limit.OfTotals {
    DataGaps() {
        super(
                "mass.data-gaps",
                Subject.MASS,
                "Figures of mass",
                Severity.MEDIUM,
                Source.commonPractice("Data gaps are tracked until they are closed"),
                "");
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        if (LoadStates.of(scene).gaps().isEmpty()) {
            rows.add(rows.draft(this).held("Every mass and centre of mass is stated."));
        }
        for (Gap gap : LoadStates.of(scene).gaps()) {
            rows.add(rows.draft(this)
                    .units(gap.unit() == null ? List.of() : List.of(gap.unit()))
                    .notAssessed(gap.sentence()));
        }
    }
}

package org.shelterwright.layouts.ledger.restraint;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.fit.PlacedFixing;
import org.shelterwright.layouts.ledger.mend.UnsetFigure;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rule;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/** Every bolted unit has at least so many fixings, so that one that works loose does not set it free. */
final class FixingCount extends NamedLimit implements Limit.OfWhole {
    FixingCount() {
        super(
                "restraint.fixing-count",
                Subject.RESTRAINT,
                "Number of fixings",
                Severity.HARD,
                Source.commonPractice("No unit hangs on one bolt"),
                "No unit is bolted.");
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        Optional<Rule> rule = scene.rules().rule(Figure.LEAST_FIXINGS);
        if (rule.isEmpty()) {
            rows.add(UnsetFigure.row(rows, this, Figure.LEAST_FIXINGS));
            return;
        }
        int needed = (int) Math.ceil(rule.get().value());
        PlacedUnit least = null;
        int fewest = Integer.MAX_VALUE;
        for (PlacedUnit unit : scene.units()) {
            int count = PlacedFixing.of(unit, Situation.ON_THE_ROAD).size();
            if (!unit.item().mounting().loose() && count > 0 && count < fewest) {
                least = unit;
                fewest = count;
            }
        }
        add(rows, rule.get(), least, needed, fewest);
    }

    private void add(Rows rows, Rule rule, @Nullable PlacedUnit least, int needed, int fewest) {
        RowDraft draft = rows.draft(this).source(rule.source());
        if (least == null) {
            rows.add(draft.held(heldSentence()));
            return;
        }
        if (fewest < needed) {
            draft.mend("Give " + least.name() + " at least " + Wording.count(needed - fewest, "fixing") + " more.");
        }
        rows.add(draft.units(least)
                .place(least.outline(Situation.ON_THE_ROAD))
                .state(Wording.situation(Situation.ON_THE_ROAD))
                .countedAtLeast(
                        needed,
                        fewest,
                        "fixings",
                        least.name() + " has the fewest fixings of all bolted units: " + fewest + "."));
    }
}

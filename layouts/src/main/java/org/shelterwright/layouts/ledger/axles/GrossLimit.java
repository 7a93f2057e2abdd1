package org.shelterwright.layouts.ledger.axles;

import java.util.Optional;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mass.LoadRow;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rule;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.VehicleLoads;

/**
 * The laden carrier weighs no more than the road rules or the licence class that the brief states: {@code mass ≤ G}. Without such
 * a figure there is nothing to hold; what Directive 96/53/EC and 23 CFR 658.17 say stands in their own rows.
 */
final class GrossLimit extends NamedLimit implements Limit.OfTotals {
    GrossLimit() {
        super(
                "axles.gross-limit",
                Subject.AXLES,
                "Gross mass by road rules",
                Severity.HARD,
                Source.stated("Brief", Figure.GROSS_LIMIT.id()),
                "No rule set and no brief sets a gross mass by road rules, or the brief names no carrier.");
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        Optional<Rule> rule = scene.rules().rule(Figure.GROSS_LIMIT);
        Optional<VehicleLoads> carrier = VehicleLoads.carrier(scene);
        if (rule.isPresent() && carrier.isPresent()) {
            rows.add(LoadRow.atMost(
                    rows.draft(this).source(rule.get().source()),
                    scene,
                    carrier.get().mass(),
                    carrier.get().roadModes(),
                    rule.get().value(),
                    "The laden " + carrier.get().vehicle().name() + " weighs",
                    ""));
        }
    }
}

package org.shelterwright.layouts.ledger.mass;

import java.util.Optional;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rule;
import org.shelterwright.layouts.scene.Scene;

/**
 * The centre of mass of the filled body lies no higher above the floor than set: {@code Σ m z / Σ m ≤ h}, in every load state
 * on the road.
 */
final class CentreHeight extends NamedLimit implements Limit.OfTotals {
    CentreHeight() {
        super(
                "mass.centre-height",
                Subject.MASS,
                "Height of the centre of mass",
                Severity.HARD,
                Source.stated("Brief", "window of the centre of mass"),
                "The centre of mass lies low enough.");
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        Optional<Rule> high = scene.rules().rule(Figure.CENTRE_Z_HIGH);
        Window window = new Window(
                Axis.Z,
                null,
                high.map(rule -> rule.value() / 1000).orElse(null),
                high.map(Rule::source).orElse(source()));
        rows.add(window.row(
                rows.draft(this),
                scene,
                "No greatest height is set. Set " + Figure.CENTRE_Z_HIGH.id() + " in the brief."));
    }
}

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
 * The centre of mass of the filled body lies in a window along the body: {@code x = Σ m x / Σ m}, in every load state on the
 * road, from the rear wall.
 */
final class CentreAlong extends NamedLimit implements Limit.OfTotals {
    CentreAlong() {
        super(
                "mass.centre-along",
                Subject.MASS,
                "Centre of mass along the body",
                Severity.HARD,
                Source.stated("Brief", "window of the centre of mass"),
                "The centre of mass lies in its window.");
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        Optional<Rule> low = scene.rules().rule(Figure.CENTRE_X_LOW);
        Optional<Rule> high = scene.rules().rule(Figure.CENTRE_X_HIGH);
        Window window = new Window(
                Axis.X,
                low.map(rule -> rule.value() / 1000).orElse(null),
                high.map(rule -> rule.value() / 1000).orElse(null),
                low.or(() -> high).map(Rule::source).orElse(source()));
        rows.add(window.row(
                rows.draft(this),
                scene,
                "No window along the body is set. Set " + Figure.CENTRE_X_LOW.id() + " and " + Figure.CENTRE_X_HIGH.id()
                        + " in the brief."));
    }
}

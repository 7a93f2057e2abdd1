package org.shelterwright.layouts.ledger.mass;

import java.util.Optional;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rule;
import org.shelterwright.layouts.scene.Scene;

/**
 * The centre of mass of the filled body lies no further from its middle plane than set: {@code |Σ m y / Σ m − w/2| ≤ e}, with
 * inside width w, in every load state on the road.
 */
final class CentreAcross extends NamedLimit implements Limit.OfTotals {
    CentreAcross() {
        super(
                "mass.centre-across",
                Subject.MASS,
                "Centre of mass across the body",
                Severity.HARD,
                Source.stated("Brief", "window of the centre of mass"),
                "The centre of mass lies in its window.");
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        Optional<Rule> off = scene.rules().rule(Figure.CENTRE_Y_OFF);
        double middle = Lengths.metres(scene.body().inside().y()) / 2;
        Window window = new Window(
                Axis.Y,
                off.map(rule -> middle - rule.value() / 1000).orElse(null),
                off.map(rule -> middle + rule.value() / 1000).orElse(null),
                off.map(Rule::source).orElse(source()));
        rows.add(window.row(
                rows.draft(this),
                scene,
                "No distance from the middle plane is set. Set " + Figure.CENTRE_Y_OFF.id() + " in the brief."));
    }
}

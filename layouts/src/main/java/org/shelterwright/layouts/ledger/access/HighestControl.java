package org.shelterwright.layouts.ledger.access;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.item.Port;
import org.shelterwright.catalog.item.Purpose;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.UnsetFigure;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rule;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * What a person plugs in or operates can be reached: height of a port above the floor, of a unit with a service zone
 * &lt;= the greatest height of a control, on station. Items state ports, not knobs, so the ports stand for both; least
 * heights are not judged. One row for each port too high, else one for the highest.
 *
 * <p>Source: the rule set of the brief. Figure: {@link Figure#REACH_HIGHEST}.
 */
final class HighestControl extends NamedLimit implements Limit.OfWhole {
    HighestControl() {
        super(
                "access.reach",
                Subject.ACCESS,
                "Reach to controls",
                Severity.MEDIUM,
                Source.commonPractice("Controls are within reach of a standing person"),
                "No unit with a service zone states a port.");
    }

    private record Control(PlacedUnit unit, Port port, Point at) {}

    @Override
    public void assess(Scene scene, Rows rows) {
        List<Control> controls = controls(scene);
        Optional<Rule> rule = scene.rules().rule(Figure.REACH_HIGHEST);
        if (controls.isEmpty()) {
            return;
        }
        if (rule.isEmpty()) {
            rows.add(UnsetFigure.row(rows, this, Figure.REACH_HIGHEST));
        } else {
            int limit = Floor.micrometres(rule.get().value());
            rows.add(row(rows, controls.get(0), rule.get()));
            controls.stream()
                    .skip(1)
                    .filter(control -> control.at().z() > limit)
                    .forEach(control -> rows.add(row(rows, control, rule.get())));
        }
    }

    /** The ports that a person comes to, the highest first. */
    private static List<Control> controls(Scene scene) {
        List<Control> controls = new ArrayList<>();
        for (PlacedUnit unit : scene.units()) {
            if (unit.zones(Situation.ON_STATION).stream().anyMatch(zone -> zone.purpose() == Purpose.SERVICE)) {
                for (Port port : unit.item().ports()) {
                    Point at = unit.pose(Situation.ON_STATION)
                            .apply(port.at(), unit.item().size());
                    controls.add(new Control(unit, port, at));
                }
            }
        }
        controls.sort(Comparator.comparing((Control control) -> -control.at().z()));
        return controls;
    }

    private Row row(Rows rows, Control control, Rule rule) {
        int height = control.at().z();
        int limit = Floor.micrometres(rule.value());
        RowDraft draft = rows.draft(
                        this,
                        "Reach to " + control.port().name() + " of "
                                + control.unit().name())
                .units(control.unit())
                .place(control.unit().outline(Situation.ON_STATION))
                .state(Wording.situation(Situation.ON_STATION))
                .source(rule.source());
        if (height > limit) {
            draft.mend("Mount " + control.unit().name() + " at least " + Wording.mm(height - limit) + " lower.");
        }
        return draft.atMost(
                Math.max(0, height) / 1e3,
                limit / 1e3,
                "mm",
                "The port \"" + control.port().name() + "\" of "
                        + control.unit().name() + " lies " + Wording.mm(height) + " above the floor.");
    }
}

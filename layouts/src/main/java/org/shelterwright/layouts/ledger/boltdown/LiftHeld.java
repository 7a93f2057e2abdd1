package org.shelterwright.layouts.ledger.boltdown;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.boltdown.StepWords;
import org.shelterwright.layouts.handling.Carrying;
import org.shelterwright.layouts.handling.Handling;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.ledger.mend.UnsetFigure;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/** Each unit is lifted and moved by people or means that bear it: see {@link Carrying}. */
final class LiftHeld extends NamedLimit implements Limit.AtRest {
    LiftHeld() {
        super(
                "boltdown.lift",
                Subject.BOLT_DOWN,
                "Lifting and moving",
                Severity.MEDIUM,
                Source.seen("DHHS (NIOSH) 94-110, rev. 9/2021", "RWL = LC HM VM DM AM FM CM, pages 12 to 31"),
                "There is no order in which anything is lifted.");
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        Carrying carrying = new Carrying(scene);
        if (scene.units().isEmpty() || scene.layout().boltDown() == null) {
            return;
        }
        Optional<Figure> missing = carrying.missing();
        if (missing.isPresent()) {
            rows.add(UnsetFigure.row(rows, this, missing.get()));
            return;
        }
        List<PlacedUnit> unknown = new ArrayList<>();
        Row tightest = null;
        for (PlacedUnit unit : scene.units()) {
            Handling handling = carrying.of(unit, false).handling();
            if (handling == null) {
                unknown.add(unit);
                continue;
            }
            Row row = row(rows, unit, handling);
            if (!handling.held()) {
                rows.add(row);
            } else if (tightest == null || use(row) > use(tightest)) {
                tightest = row;
            }
        }
        if (tightest != null) {
            rows.add(tightest);
        }
        if (!unknown.isEmpty()) {
            rows.add(rows.draft(this)
                    .units(unknown.toArray(PlacedUnit[]::new))
                    .mend("Enter or weigh them.")
                    .notAssessed("The mass of "
                            + Wording.list(
                                    unknown.stream().map(PlacedUnit::name).toList()) + " is not known."));
        }
    }

    private static double use(Row row) {
        Double use = row.use();
        return use == null ? 0 : use;
    }

    private Row row(Rows rows, PlacedUnit unit, Handling handling) {
        return rows.draft(this)
                .units(unit)
                .place(unit.outline(Situation.ON_STATION))
                .state("while bolting down")
                .mend(
                        handling.held()
                                ? null
                                : "State on the item what comes off it, take heavy parts out first, or use a stronger hoist.")
                .atMost(
                        handling.massKg(),
                        handling.limitKg(),
                        "kg",
                        unit.name() + " weighs up to " + Amounts.kg(handling.massKg()) + ". "
                                + StepWords.handling(handling) + ".");
    }
}

package org.shelterwright.layouts.ledger.boltdown;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.UnsetFigure;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rule;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.ways.Removal;

/**
 * What is serviced can come out again: of each unit that draws power or provides something, no more than a set number of other units must be
 * moved first. What stands on it counts among them.
 */
final class ComesOut extends NamedLimit implements Limit.AtRest {
    ComesOut() {
        super(
                "boltdown.removal",
                Subject.BOLT_DOWN,
                "Comes out for service",
                Severity.MEDIUM,
                Source.commonPractice("What is serviced or worn out can be replaced without emptying the body"),
                "No unit draws power or provides anything, or there is no order.");
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        if (scene.layout().boltDown() == null) {
            return;
        }
        List<PlacedUnit> serviced = serviced(scene);
        Optional<Rule> most = scene.rules().rule(Figure.REMOVAL_MOVED);
        if (serviced.isEmpty()) {
            return;
        }
        if (most.isEmpty()) {
            rows.add(UnsetFigure.row(rows, this, Figure.REMOVAL_MOVED));
            return;
        }
        List<Row> broken = new ArrayList<>();
        Row tightest = null;
        RemovalTime time = new RemovalTime(scene);
        for (Removal removal : Removal.of(scene, serviced, most.get().value())) {
            Row row = row(rows, removal, most.get(), time);
            if (row.excess() > 0) {
                broken.add(row);
            } else if (tightest == null || use(row) > use(tightest)) {
                tightest = row;
            }
        }
        broken.forEach(rows::add);
        if (tightest != null) {
            rows.add(tightest);
        }
    }

    /** Units that wear out or fail: those that draw power or provide something. */
    private static List<PlacedUnit> serviced(Scene scene) {
        return scene.units().stream()
                .filter(unit -> unit.item().power() != null || unit.item().plant() != null)
                .toList();
    }

    private static double use(Row row) {
        Double use = row.use();
        return use == null ? 0 : use;
    }

    private Row row(Rows rows, Removal removal, Rule most, RemovalTime time) {
        PlacedUnit unit = removal.unit();
        List<String> names = removal.first().stream().map(PlacedUnit::name).toList();
        String finding = !removal.possible()
                ? unit.name() + " does not come out at all: see the rows on openings and overlaps."
                : names.isEmpty()
                        ? unit.name() + " comes out with nothing moved first."
                        : unit.name() + " comes out once " + Wording.list(names)
                                + (names.size() == 1 ? " is out." : " are out.");
        long minutes = removal.possible() ? Math.round(time.minutes(removal)) : 0;
        String taking = minutes == 0 ? "" : " Taking out takes about " + minutes + " min, putting in again as long.";
        double moved = removal.possible() ? names.size() : most.value() + 1;
        return rows.draft(this)
                .units(unit)
                .units(removal.first().toArray(PlacedUnit[]::new))
                .place(unit.outline(Situation.ON_STATION))
                .state("in service")
                .source(most.source())
                .mend(moved > most.value() ? "Give it a way of its own to an opening." : null)
                .atMost(moved, most.value(), "units", finding + taking);
    }
}

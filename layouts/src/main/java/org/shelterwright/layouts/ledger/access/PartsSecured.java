package org.shelterwright.layouts.ledger.access;

import java.util.List;
import org.shelterwright.catalog.item.MovablePart;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * Every movable part states what holds it on the road; a unit with parts that do not is not assessed.
 *
 * <p>Source: common practice.
 */
final class PartsSecured extends NamedLimit implements Limit.OfUnit {
    PartsSecured() {
        super(
                "access.secured",
                Subject.ACCESS,
                "Movable parts secured",
                Severity.MEDIUM,
                Source.commonPractice("Doors, drawers and slide-outs are held on the road"),
                "Every movable part states what holds it on the road.");
    }

    @Override
    public void assess(Scene scene, PlacedUnit unit, Rows rows) {
        List<String> open = unit.item().movableParts().stream()
                .filter(part -> part.securedBy() == null)
                .map(MovablePart::name)
                .toList();
        if (!open.isEmpty()) {
            rows.add(rows.draft(this)
                    .units(unit)
                    .place(unit.outline(Situation.ON_THE_ROAD))
                    .state(Wording.situation(Situation.ON_THE_ROAD))
                    .mend("State in item " + unit.item().id() + " what holds them, such as a latch.")
                    .notAssessed(
                            "What holds " + Wording.list(open) + " of " + unit.name() + " on the road is not stated."));
        }
    }
}

package org.shelterwright.layouts.ledger.fit;

import java.util.List;
import org.shelterwright.catalog.body.Intrusion;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.GoverningCase;
import org.shelterwright.layouts.ledger.mend.Separation;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * No solid lies in a wheel arch or another part of the body: max over solids of the depth = 0. One row for each unit and
 * intrusion.
 *
 * <p>Source: common practice.
 */
final class ClearOfIntrusions extends NamedLimit implements Limit.OfUnit {
    ClearOfIntrusions() {
        super(
                "fit.intrusion",
                Subject.FIT,
                "Clear of the body's own parts",
                Severity.HARD,
                Source.commonPractice("Two solids cannot fill one space"),
                "No unit stands in a part of the body.");
    }

    @Override
    public void assess(Scene scene, PlacedUnit unit, Rows rows) {
        for (Intrusion intrusion : scene.body().intrusions()) {
            GoverningCase worst = GoverningCase.of(situation -> depth(unit, intrusion.box(), situation));
            if (worst.amount() > 0) {
                String mend = Separation.least(scene, unit, worst.situation(), List.of(intrusion.box()))
                        .map(shift -> "Move " + unit.name() + " at least " + shift.words() + ".")
                        .orElse("Find another place for " + unit.name() + ".");
                rows.add(rows.draft(this)
                        .units(unit)
                        .place(intrusion.box())
                        .state(worst.state())
                        .mend(mend)
                        .atMost(
                                worst.amount() / 1e3,
                                0,
                                "mm",
                                unit.name() + " stands " + Wording.mm(worst.amount()) + " into " + intrusion.name()
                                        + "."));
            }
        }
    }

    private static int depth(PlacedUnit unit, Box part, Situation situation) {
        int deepest = 0;
        if (unit.outline(situation).overlaps(part)) {
            for (Box solid : unit.solids(situation)) {
                deepest = Math.max(deepest, solid.depth(part));
            }
        }
        return deepest;
    }
}

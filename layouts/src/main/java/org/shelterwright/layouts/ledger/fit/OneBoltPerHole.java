package org.shelterwright.layouts.ledger.fit;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.GoverningCase;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * No two units bolt into one hole of the body. Demand: number of places that both use, of 0.
 *
 * <p>Source: common practice.
 */
final class OneBoltPerHole extends NamedLimit implements Limit.OfPair {
    OneBoltPerHole() {
        super(
                "fit.shared-hole",
                Subject.FIT,
                "One fixing in a hole",
                Severity.HARD,
                Source.commonPractice("A hole takes one bolt"),
                "No two fixings share a hole.");
    }

    @Override
    public void assess(Scene scene, PlacedUnit a, PlacedUnit b, Rows rows) {
        if (a.item().fixings().isEmpty() || b.item().fixings().isEmpty()) {
            return;
        }
        GoverningCase worst =
                GoverningCase.of(situation -> shared(a, b, situation).size());
        if (worst.amount() > 0) {
            Point first = shared(a, b, worst.situation()).get(0);
            rows.add(rows.draft(this)
                    .units(a, b)
                    .place(a.outline(worst.situation()).hull(b.outline(worst.situation())))
                    .state(worst.state())
                    .mend("Move " + b.name() + " by one hole.")
                    .atMost(
                            worst.amount(),
                            0,
                            "holes",
                            a.name() + " and " + b.name() + " both need "
                                    + Wording.count(worst.amount(), "hole") + ", at x "
                                    + Wording.mm(first.x()) + ", y " + Wording.mm(first.y()) + ", z "
                                    + Wording.mm(first.z()) + "."));
        }
    }

    private static List<Point> shared(PlacedUnit a, PlacedUnit b, Situation situation) {
        List<Point> shared = new ArrayList<>();
        List<PlacedFixing> others = PlacedFixing.of(b, situation);
        for (PlacedFixing one : PlacedFixing.of(a, situation)) {
            for (PlacedFixing other : others) {
                if (!one.intoHost()
                        && !other.intoHost()
                        && one.face() == other.face()
                        && one.at().equals(other.at())) {
                    shared.add(one.at());
                }
            }
        }
        return shared;
    }
}

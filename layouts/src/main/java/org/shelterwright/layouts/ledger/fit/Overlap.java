package org.shelterwright.layouts.ledger.fit;

import java.util.List;
import java.util.Optional;
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
import org.shelterwright.layouts.ledger.mend.Shift;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * No two units share space: max over pairs of solids of their depth = 0, where the depth is the least shift along one
 * axis that parts the two. Touching is not overlapping. A unit on or under another is held to the same.
 *
 * <p>Source: common practice.
 */
final class Overlap extends NamedLimit implements Limit.OfPair {
    Overlap() {
        super(
                "fit.overlap",
                Subject.FIT,
                "Overlap",
                Severity.HARD,
                Source.commonPractice("Two solids cannot fill one space"),
                "No two units overlap.");
    }

    @Override
    public void assess(Scene scene, PlacedUnit a, PlacedUnit b, Rows rows) {
        GoverningCase worst = GoverningCase.of(situation -> depth(a, b, situation));
        if (worst.amount() == 0) {
            return;
        }
        Situation situation = worst.situation();
        boolean bMoves = !b.placement().pin().whole();
        PlacedUnit moving = bMoves ? b : a;
        PlacedUnit staying = bMoves ? a : b;
        rows.add(rows.draft(this)
                .units(a, b)
                .place(shared(a, b, situation))
                .state(worst.state())
                .mend(mend(scene, moving, staying, situation))
                .atMost(
                        worst.amount() / 1e3,
                        0,
                        "mm",
                        moving.name() + " stands " + Wording.mm(worst.amount()) + " into " + staying.name() + "."));
    }

    private static int depth(PlacedUnit a, PlacedUnit b, Situation situation) {
        if (!a.outline(situation).overlaps(b.outline(situation))) {
            return 0;
        }
        int deepest = 0;
        List<Box> others = b.solids(situation);
        for (Box solid : a.solids(situation)) {
            for (int i = 0; i < others.size(); i++) {
                deepest = Math.max(deepest, solid.depth(others.get(i)));
            }
        }
        return deepest;
    }

    private static Box shared(PlacedUnit a, PlacedUnit b, Situation situation) {
        Box shared = null;
        int deepest = 0;
        for (Box one : a.solids(situation)) {
            for (Box other : b.solids(situation)) {
                int depth = one.depth(other);
                if (depth > deepest) {
                    deepest = depth;
                    shared = one.intersection(other);
                }
            }
        }
        return shared == null ? a.outline(situation) : shared;
    }

    private static String mend(Scene scene, PlacedUnit moving, PlacedUnit staying, Situation situation) {
        Optional<Shift> shift = Separation.least(scene, moving, situation, staying.solids(situation));
        if (shift.isPresent()) {
            return "Move " + moving.name() + " at least " + shift.get().words() + ".";
        }
        return Separation.least(scene, staying, situation, moving.solids(situation))
                .map(other -> "Move " + staying.name() + " at least " + other.words() + ".")
                .orElse("Find another place for " + moving.name() + " or " + staying.name() + ".");
    }
}

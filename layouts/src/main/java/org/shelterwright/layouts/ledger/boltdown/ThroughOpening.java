package org.shelterwright.layouts.ledger.boltdown;

import java.util.List;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.ways.Passage;
import org.shelterwright.layouts.ways.Passage.Answer;
import org.shelterwright.layouts.ways.UnitWays;

/** Each unit comes through an opening of the body while nothing else is in it: sliding, exactly; turning by quarters, by a safe bound. */
final class ThroughOpening extends NamedLimit implements Limit.OfUnit {
    ThroughOpening() {
        super(
                "boltdown.opening",
                Subject.BOLT_DOWN,
                "Comes through an opening",
                Severity.HARD,
                Source.commonPractice("What is to be inside must come in; exact sliding of cuboids, theory manual"),
                "Every unit comes through an opening of the empty body.");
    }

    @Override
    public void assess(Scene scene, PlacedUnit unit, Rows rows) {
        List<Opening> openings = UnitWays.openings(scene.body());
        if (openings.isEmpty()) {
            return;
        }
        Passage alone = new UnitWays(scene).alone(unit);
        if (alone.answer() == Answer.TOO_LARGE || alone.answer() == Answer.BLOCKED) {
            List<String> names = openings.stream().map(Opening::name).toList();
            rows.add(rows.draft(this)
                    .units(unit)
                    .place(openings.get(0).area())
                    .mend(
                            "Take it apart and enter the parts as items of their own, place it elsewhere, or make an opening"
                                    + " larger.")
                    .atMost(
                            1,
                            0,
                            "unit",
                            unit.name() + " does not come from its place through the "
                                    + Wording.list(names)
                                    + ", even with nothing else in the body."));
        }
    }
}

package org.shelterwright.layouts.ledger.fit;

import java.util.List;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.Scene;

/**
 * Every unit of the brief has a place. Demand: number of units without one, of 0.
 *
 * <p>Source: the brief.
 */
final class AllPlaced extends NamedLimit implements Limit.OfWhole {
    AllPlaced() {
        super(
                "fit.placed",
                Subject.FIT,
                "Units to place",
                Severity.HARD,
                Source.stated("Brief", "equipment list"),
                "Every unit of the brief has a place.");
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        List<UnitSpec> toPlace = scene.toPlace();
        if (toPlace.isEmpty()) {
            rows.add(rows.draft(this).held(heldSentence()));
            return;
        }
        String names = Wording.list(toPlace.stream().map(UnitSpec::name).toList());
        rows.add(rows.draft(this)
                .units(toPlace.stream().map(UnitSpec::id).toList())
                .mend("Find places for them, or take them out of the brief.")
                .atMost(
                        toPlace.size(),
                        0,
                        "units",
                        Wording.count(toPlace.size(), "unit") + " to place: " + names + "."));
    }
}

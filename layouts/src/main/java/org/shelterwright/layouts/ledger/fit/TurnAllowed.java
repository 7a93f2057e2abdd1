package org.shelterwright.layouts.ledger.fit;

import java.util.Set;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.QuarterTurn;
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
 * A unit is turned as its item allows. Demand: 1 if not, of 0.
 *
 * <p>Source: the allowed turns of the item in the catalog.
 */
final class TurnAllowed extends NamedLimit implements Limit.OfUnit {
    TurnAllowed() {
        super(
                "fit.turn",
                Subject.FIT,
                "Turn",
                Severity.HARD,
                Source.stated("Catalog", "turns of the item"),
                "Every unit is turned as it may be.");
    }

    @Override
    public void assess(Scene scene, PlacedUnit unit, Rows rows) {
        Set<QuarterTurn> allowed = unit.item().turns();
        GoverningCase worst = GoverningCase.of(situation -> allowed.contains(turn(unit, situation)) ? 0 : 1);
        if (worst.amount() > 0) {
            String others = Wording.list(
                    allowed.stream().sorted().map(turn -> turn.degrees() + "°").toList());
            rows.add(rows.draft(this)
                    .units(unit)
                    .place(unit.outline(worst.situation()))
                    .state(worst.state())
                    .mend("Turn it to " + others + ".")
                    .atMost(
                            1,
                            0,
                            "",
                            unit.name() + " is turned by "
                                    + turn(unit, worst.situation()).degrees() + "°, which its item does not allow."));
        }
    }

    private static QuarterTurn turn(PlacedUnit unit, Situation situation) {
        return unit.pose(situation).yaw();
    }
}

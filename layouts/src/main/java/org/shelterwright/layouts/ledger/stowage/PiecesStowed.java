package org.shelterwright.layouts.ledger.stowage;

import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.inside.Unplaced;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.Scene;

/**
 * Every loose piece of the brief has a place, in the unit that the brief asks for. Demand: number of pieces that have not, of 0.
 *
 * <p>Source: KKK-A-1822E 3.11.1.1, everything in closed compartments or fastened.
 */
final class PiecesStowed extends NamedLimit implements Limit.OfWhole {
    private static final int MOST_NAMED = 8;

    PiecesStowed() {
        super(
                "stowage.placed",
                Subject.STOWAGE,
                "Loose pieces to stow",
                Severity.HARD,
                Source.seen("KKK-A-1822E", "3.11.1.1, everything in closed compartments or fastened"),
                "The brief lists no loose pieces.");
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        if (!scene.interiors().anyLoose()) {
            return;
        }
        Unplaced open = scene.interiors().looseUnplaced();
        int count = open.names().size();
        if (count == 0) {
            rows.add(rows.draft(this).held("Every loose piece has its place."));
            return;
        }
        rows.add(rows.draft(this)
                .units(open.units())
                .mend("Put them into a place with room, or take them out of the inventory.")
                .atMost(
                        count,
                        0,
                        "pieces",
                        Wording.count(count, "piece") + " to stow: " + Wording.few(open.names(), MOST_NAMED) + "."));
    }
}

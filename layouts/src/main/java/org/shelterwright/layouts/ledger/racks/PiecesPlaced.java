package org.shelterwright.layouts.ledger.racks;

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
 * Every rack-mounted piece of the brief has a place in a bay, in the unit that the brief asks for. Demand: number of pieces that
 * have not, of 0.
 *
 * <p>Source: the brief.
 */
final class PiecesPlaced extends NamedLimit implements Limit.OfWhole {
    private static final int MOST_NAMED = 8;

    PiecesPlaced() {
        super(
                "racks.placed",
                Subject.RACKS,
                "Rack-mounted pieces to place",
                Severity.HARD,
                Source.stated("Brief", "inventory"),
                "The brief lists no rack-mounted pieces.");
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        if (!scene.interiors().anyRacked()) {
            return;
        }
        Unplaced open = scene.interiors().rackedUnplaced();
        int count = open.names().size();
        if (count == 0) {
            rows.add(rows.draft(this).held("Every rack-mounted piece has its place."));
            return;
        }
        rows.add(rows.draft(this)
                .units(open.units())
                .mend("Put them into a bay with free height units, or take them out of the inventory.")
                .atMost(
                        count,
                        0,
                        "pieces",
                        Wording.count(count, "piece") + " to place: " + Wording.few(open.names(), MOST_NAMED) + "."));
    }
}

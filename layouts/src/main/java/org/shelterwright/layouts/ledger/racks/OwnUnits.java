package org.shelterwright.layouts.ledger.racks;

import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.inside.InRack;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.scene.Scene;

/**
 * No two pieces of a bay share a height unit, and each panel sits on whole units, on the holes. Demand: number of height units
 * that are taken twice, of 0.
 *
 * <p>Source: IEC 60297-3-100, unit 44.45 mm.
 */
final class OwnUnits extends BayLimit {
    OwnUnits() {
        super(
                "racks.own-units",
                "Height units taken twice",
                Severity.HARD,
                Source.seen("IEC 60297-3-100 and EIA-310-D", "height unit 44.45 mm, three holes each"));
    }

    @Override
    void assess(Scene scene, FilledBay bay, Rows rows) {
        int[] count = new int[bay.bay().units() + 2];
        InRack first = null;
        InRack second = null;
        for (InRack piece : bay.pieces()) {
            for (int unit = piece.lowest(); unit <= piece.highest(); unit++) {
                count[unit]++;
            }
            for (InRack other : bay.pieces()) {
                if (first == null && other != piece && piece.overlaps(other)) {
                    first = piece;
                    second = other;
                }
            }
        }
        int twice = 0;
        for (int one : count) {
            twice += Math.max(0, one - 1);
        }
        if (first == null || second == null) {
            rows.add(draft(rows, bay).held("No two pieces of " + bay.name() + " share a height unit."));
            return;
        }
        rows.add(draft(rows, bay, first)
                .mend("Move " + second.name() + " to free units.")
                .atMost(
                        twice,
                        0,
                        "U",
                        first.name() + " at U" + first.lowest() + " to U" + first.highest() + " and " + second.name()
                                + " at U" + second.lowest() + " to U" + second.highest() + " of " + bay.name()
                                + " share height units."));
    }
}

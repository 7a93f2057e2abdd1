package org.shelterwright.layouts.ledger.transport.place;

import java.util.List;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.ledger.transport.LegLimit;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/** No two pieces of a car fill the same space; touching is not overlapping. Source: none needed. */
final class Apart extends LegLimit {
    Apart() {
        super(
                "overlap",
                "Overlap on a car",
                Source.commonPractice("two things cannot be in one place"),
                "Nothing overlaps on a car.");
    }

    @Override
    public void assess(LegScene leg, Rows rows) {
        for (PlacedLoad load : leg.loads()) {
            for (int i = 0; i < load.pieces().size(); i++) {
                for (int j = i + 1; j < load.pieces().size(); j++) {
                    pair(load, load.pieces().get(i), load.pieces().get(j), leg, rows);
                }
            }
        }
    }

    private void pair(PlacedLoad load, PlacedPiece a, PlacedPiece b, LegScene leg, Rows rows) {
        if (!a.box().overlaps(b.box())) {
            return;
        }
        for (Box one : a.solids()) {
            for (Box two : b.solids()) {
                int depth = one.depth(two);
                if (depth > 0) {
                    rows.add(draft(leg, rows)
                            .units(List.of(a.id(), b.id(), load.id()))
                            .place(one.intersection(two))
                            .mend("Move one of them by at least " + Wording.mm(depth) + ".")
                            .atMost(
                                    depth / 1000.0,
                                    0,
                                    "mm",
                                    a.name() + " and " + b.name() + " overlap by " + Wording.mm(depth) + " on "
                                            + load.name() + "."));
                    return;
                }
            }
        }
    }
}

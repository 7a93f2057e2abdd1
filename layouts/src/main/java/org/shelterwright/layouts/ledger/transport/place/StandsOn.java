package org.shelterwright.layouts.ledger.transport.place;

import java.util.List;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.ledger.transport.LegLimit;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;
import org.shelterwright.layouts.transport.scene.Resting;

/**
 * All of a piece's underside rests on the floor or on the tops of others. Source: full support, as the published sets of container
 * loading ask it; common practice for crates.
 */
final class StandsOn extends LegLimit {
    StandsOn() {
        super(
                "support",
                "Full support",
                Source.commonPractice("crates rest on the floor or on others with all of their underside"),
                "Everything rests on the floor or on others.");
    }

    @Override
    public void assess(LegScene leg, Rows rows) {
        for (PlacedLoad load : leg.loads()) {
            for (PlacedPiece piece : load.pieces()) {
                double share = share(piece, load);
                if (share < 1) {
                    rows.add(draft(leg, rows)
                            .units(List.of(piece.id(), load.id()))
                            .place(piece.box())
                            .mend("Set it on the floor, or on others of the same height under all of it.")
                            .atLeast(
                                    1,
                                    share,
                                    "share",
                                    piece.name() + " on " + load.name() + " rests with only " + Amounts.percent(share)
                                            + " of its underside."));
                }
            }
        }
    }

    private static double share(PlacedPiece piece, PlacedLoad load) {
        Box box = piece.box();
        if (box.z0() == 0) {
            return 1;
        }
        double held = Resting.on(piece, load).values().stream()
                .mapToDouble(one -> one)
                .sum();
        return held / ((double) (box.x1() - box.x0()) * (box.y1() - box.y0()));
    }
}

package org.shelterwright.layouts.ledger.transport.securing;

import java.util.List;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.transport.LegLimit;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/**
 * Each lashing has a length that its kind can have, and a direct one touches nothing between its ends: an under-vehicle lashing may touch
 * only its eye. Near the eye its own piece is not looked at. Source: data of the lashing; TEA Pamphlet 55-19 (seen).
 */
final class LashingFits extends LegLimit {
    private static final double NEAR_EYE = 150_000;
    private static final int STEPS = 60;

    LashingFits() {
        super(
                "lashing-way",
                "Way of the lashings",
                Source.seen("TEA Pamphlet 55-19", "a lashing touches nothing but its eye"),
                "Every lashing has the right length and runs free.");
    }

    @Override
    public void assess(LegScene leg, Rows rows) {
        for (PlacedLoad load : leg.loads()) {
            for (Rope rope : Rope.of(leg, load)) {
                length(leg, load, rope, rows);
                if (rope.direct()) {
                    way(leg, load, rope, rows);
                }
            }
        }
    }

    private void length(LegScene leg, PlacedLoad load, Rope rope, Rows rows) {
        double mm = rope.length() / 1000;
        double shortest = rope.kind().shortest() / 1000.0;
        double longest = rope.kind().longest() / 1000.0;
        String text = "Lashing " + rope.lashing().key() + " is " + Math.round(mm) + " mm long; the "
                + rope.kind().name() + " spans " + Math.round(shortest) + " to " + Math.round(longest) + " mm.";
        var draft = draft(leg, rows)
                .units(List.of(rope.lashing().what().get(0), load.id()))
                .source(rope.kind().source());
        if (mm < shortest) {
            rows.add(draft.mend("Take an anchor point farther off, or a shorter kind.")
                    .atLeast(shortest, mm, "mm", text));
        } else if (mm > longest) {
            rows.add(draft.mend("Take a nearer anchor point, or a longer kind.").atMost(mm, longest, "mm", text));
        }
    }

    private void way(LegScene leg, PlacedLoad load, Rope rope, Rows rows) {
        PlacedPiece own = rope.pieces().get(0);
        for (PlacedPiece piece : load.pieces()) {
            double from = from(rope, piece);
            for (Box solid : piece.solids()) {
                if (meets(rope.top(), rope.foot(), from, solid)) {
                    rows.add(draft(leg, rows)
                            .units(List.of(own.id(), piece.id(), load.id()))
                            .place(solid)
                            .mend("Take another anchor point or eye.")
                            .atMost(
                                    1,
                                    0,
                                    "",
                                    "Lashing " + rope.lashing().key() + " of " + own.name() + " runs through "
                                            + piece.name() + "."));
                    return;
                }
            }
        }
    }

    /** From which part of its length on a lashing must run free of a piece. */
    static double from(Rope rope, PlacedPiece piece) {
        return piece == rope.pieces().get(0) ? Math.min(0.9, NEAR_EYE / Math.max(1, rope.length())) : 0;
    }

    /** Whether a line meets the inside of a cuboid, by the overlap of its three intervals. */
    static boolean meets(Point a, Point b, double from, Box box) {
        double low = from;
        double high = 1 - 1.0 / STEPS;
        double[] start = {a.x(), a.y(), a.z()};
        double[] way = {b.x() - (double) a.x(), b.y() - (double) a.y(), b.z() - (double) a.z()};
        double[] least = {box.x0(), box.y0(), box.z0()};
        double[] most = {box.x1(), box.y1(), box.z1()};
        for (int i = 0; i < 3; i++) {
            if (way[i] == 0) {
                if (start[i] <= least[i] || start[i] >= most[i]) {
                    return false;
                }
                continue;
            }
            double t0 = (least[i] - start[i]) / way[i];
            double t1 = (most[i] - start[i]) / way[i];
            low = Math.max(low, Math.min(t0, t1));
            high = Math.min(high, Math.max(t0, t1));
        }
        return low < high;
    }
}

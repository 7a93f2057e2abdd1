package org.shelterwright.layouts.ledger.transport.securing;

import java.util.List;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.ledger.transport.LegLimit;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rule;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/**
 * A person reaches each tensioner. It sits by the anchor point; on an open deck it is reached from beside the car if the point lies near
 * the side, otherwise a free width must lie beside it. Source: PS Magazine 679: tensioners low, near the bed, so that they can be reached
 * and checked (seen); the width is an editable figure.
 */
final class TensionerReach extends LegLimit {
    private static final int NEAR_SIDE = 400_000;
    private static final int TALL = 1_500_000;

    TensionerReach() {
        super(
                "tensioner-reach",
                "Reach to the tensioners",
                Source.seen("PS Magazine 679", "turnbuckles low, near the bed, within reach"),
                "Every tensioner can be reached.");
    }

    @Override
    public void assess(LegScene leg, Rows rows) {
        Rule space = leg.rules().rule(Figure.TENSIONER_SPACE).orElse(null);
        for (PlacedLoad load : leg.loads()) {
            List<Rope> ropes = Rope.of(leg, load);
            if (space == null && !ropes.isEmpty()) {
                rows.add(unset(draft(leg, rows).units(load.ids()), Figure.TENSIONER_SPACE));
            }
            if (space == null) {
                continue;
            }
            for (Rope rope : ropes) {
                double free = free(load, rope.foot(), space.value());
                if (free < space.value()) {
                    rows.add(draft(leg, rows)
                            .units(List.of(rope.lashing().what().get(0), load.id()))
                            .source(space.source())
                            .mend("Take an anchor point at the free side, or move what stands beside it.")
                            .atLeast(
                                    space.value(),
                                    free,
                                    "mm",
                                    "Beside the tensioner of lashing "
                                            + rope.lashing().key() + " on " + load.name() + " are only "
                                            + Amounts.number(free, 0) + " mm free."));
                }
            }
        }
    }

    /** The free width (mm) beside an anchor point, no more than is asked. */
    static double free(PlacedLoad load, Point anchor, double askedMm) {
        int width = load.car().deck().width();
        boolean open = load.car().deck().clearHeight() == null;
        if (open && Math.min(anchor.y(), width - anchor.y()) <= NEAR_SIDE) {
            return askedMm;
        }
        int asked = (int) Math.round(askedMm * 1000);
        int best = 0;
        for (int dx : new int[] {-asked, 0}) {
            for (int dy : new int[] {-asked, 0}) {
                int y0 = Math.max(0, Math.min(width - asked, anchor.y() + dy));
                int x0 = Math.max(0, Math.min(load.car().deck().length() - asked, anchor.x() + dx));
                best = Math.max(best, freeBeside(load, new Box(x0, y0, 0, x0 + asked, y0 + asked, TALL), asked));
            }
        }
        return best / 1000.0;
    }

    private static int freeBeside(PlacedLoad load, Box hands, int asked) {
        int free = asked;
        for (PlacedPiece piece : load.pieces()) {
            for (Box solid : piece.solids()) {
                if (solid.overlaps(hands)) {
                    free = Math.min(free, Math.max(0, asked - solid.depth(hands)));
                }
            }
        }
        return free;
    }
}

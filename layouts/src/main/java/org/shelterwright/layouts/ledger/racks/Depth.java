package org.shelterwright.layouts.ledger.racks;

import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.inside.InRack;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.Scene;

/**
 * Each piece fits the depth of its bay, with plugs and bent cables: before the mounting plane and behind it,
 * d + plug + bend radius ≤ room; a folded cable arm counts at the rear. The tightest piece and side govern. Whether a bend is
 * allowed at all is the business of its cable.
 *
 * <p>Source: IEC 60297 (depths are stated by the maker); bend radius of the cable as stated, 4 times the diameter of paired data
 * cable, 10 times of fibre (MIL-HDBK-1012/3).
 */
final class Depth extends BayLimit {
    Depth() {
        super(
                "racks.depth",
                "Depth with cables",
                Severity.HARD,
                Source.seen("MIL-HDBK-1012/3", "bend radii of cables; depths as stated"));
    }

    @Override
    void assess(Scene scene, FilledBay bay, Rows rows) {
        InRack worst = bay.pieces().get(0);
        boolean atFront = false;
        int least = Integer.MAX_VALUE;
        for (InRack piece : bay.pieces()) {
            int rear = bay.bay().rearRoom() - rear(piece);
            int front = bay.bay().frontRoom() - front(piece);
            if (Math.min(rear, front) < least) {
                least = Math.min(rear, front);
                worst = piece;
                atFront = front < rear;
            }
        }
        int need = atFront ? front(worst) : rear(worst);
        int room = atFront ? bay.bay().frontRoom() : bay.bay().rearRoom();
        rows.add(draft(rows, bay, worst)
                .mend("Take a deeper rack, angled plugs, or a piece that is less deep.")
                .atMost(
                        need / (double) Lengths.MM,
                        room / (double) Lengths.MM,
                        "mm",
                        worst.name() + " needs " + Wording.mm(need) + (atFront ? " before" : " behind")
                                + " the mounting plane of " + bay.name() + " with its cables; there are "
                                + Wording.mm(room) + "."));
    }

    private static int rear(InRack piece) {
        return piece.rearDepth() + piece.mount().cableDepth(Face.REAR);
    }

    private static int front(InRack piece) {
        return piece.mount().frontDepth() + piece.mount().cableDepth(Face.FRONT);
    }
}

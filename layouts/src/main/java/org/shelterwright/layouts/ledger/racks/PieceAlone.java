package org.shelterwright.layouts.ledger.racks;

import java.util.List;
import org.shelterwright.layouts.inside.InRack;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/** What the limits say of one piece in a bay, as if it were alone there: for an arrangement that weighs places one by one. */
public final class PieceAlone {
    private static final List<BayLimit> LIMITS = List.of(new HeavyLow(), new RearHold(), new Depth(), new AtHeight());
    private static final double CLOSE_SHARE = 0.9;

    private PieceAlone() {}

    /** How far a place oversteps the limits of severity: the sum of what each is overstepped by, in its unit, and one more each. */
    public static double excess(Scene scene, PlacedUnit unit, InRack piece, Severity severity) {
        FilledBay bay = new FilledBay(unit, piece.bay(), List.of(piece));
        double excess = 0;
        for (BayLimit limit : LIMITS) {
            if (limit.severity() == severity) {
                Rows rows = new Rows(CLOSE_SHARE);
                limit.assess(scene, bay, rows);
                for (Row row : rows.list()) {
                    excess += row.excess() > 0 ? 1 + row.excess() : 0;
                }
            }
        }
        return excess;
    }
}

package org.shelterwright.layouts.ledger.lifting;

import java.util.List;
import org.shelterwright.layouts.ledger.Limit;

/** The limits of the subject lifting. */
public final class LiftingLimits {
    private LiftingLimits() {}

    public static List<Limit> all() {
        return List.of(
                new LegForce(),
                new LegAngle(),
                new HangTilt(),
                new EyesAbove(),
                new ForkPockets(),
                new StandLoad(),
                new StandBase());
    }
}

package org.shelterwright.layouts.ledger.boltdown;

import java.util.List;
import org.shelterwright.layouts.ledger.Limit;

/** The limits of the subject bolt-down. */
public final class BoltDownLimits {
    private BoltDownLimits() {}

    public static List<Limit> all() {
        return List.of(
                new ThroughOpening(),
                new InOrder(),
                new SetBefore(),
                new ToolsReach(),
                new LiftHeld(),
                new OnStands(),
                new ComesOut());
    }
}

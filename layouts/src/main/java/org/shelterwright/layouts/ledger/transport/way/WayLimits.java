package org.shelterwright.layouts.ledger.transport.way;

import java.util.List;
import org.shelterwright.layouts.ledger.restraint.Fasteners;
import org.shelterwright.layouts.ledger.transport.LegLimit;

/** The limits of ways, and of what bodies hold inside on them. */
public final class WayLimits {
    private WayLimits() {}

    /** @param fasteners the bolts whose strength is known */
    public static List<LegLimit> all(Fasteners fasteners) {
        return List.of(
                new OnRoad(),
                new RoadSize(),
                new Restricted(),
                new RampPasses(),
                new Lifted(),
                new ContentsHeld(fasteners));
    }
}

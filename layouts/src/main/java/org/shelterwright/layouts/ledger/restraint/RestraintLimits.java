package org.shelterwright.layouts.ledger.restraint;

import java.util.List;
import org.shelterwright.layouts.ledger.Limit;

/** The limits of the subject restraint. */
public final class RestraintLimits {
    private RestraintLimits() {}

    /** @param fasteners the bolts whose strength is known */
    public static List<Limit> all(Fasteners fasteners) {
        return List.of(new FixingStrength(fasteners), new PullPerMetre(fasteners), new FixingCount(), new LooseHold());
    }
}

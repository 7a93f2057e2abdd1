package org.shelterwright.layouts.ledger.stability;

import java.util.List;
import org.shelterwright.layouts.ledger.Limit;

/** The limits of the subject stability. */
public final class StabilityLimits {
    private StabilityLimits() {}

    public static List<Limit> all() {
        return List.of(new StaticFactor(), new TiltAngle(), new HeightToTrack(), new SideSlope(), new Grade());
    }
}

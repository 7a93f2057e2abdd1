package org.shelterwright.layouts.ledger.axles.road;

import java.util.List;
import org.shelterwright.layouts.ledger.Limit;

/** The road rules that a brief may choose. */
public final class RoadLimits {
    private RoadLimits() {}

    public static List<Limit> all() {
        return List.of(new EuRoad(), new UsRoad());
    }
}

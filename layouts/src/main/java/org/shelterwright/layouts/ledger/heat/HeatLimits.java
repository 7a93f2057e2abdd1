package org.shelterwright.layouts.ledger.heat;

import java.util.List;
import org.shelterwright.layouts.ledger.Limit;

/** The limits of the subject heat. */
public final class HeatLimits {
    private HeatLimits() {}

    public static List<Limit> all() {
        return List.of(new Cooling(), new Heating(), new FreshAir());
    }
}

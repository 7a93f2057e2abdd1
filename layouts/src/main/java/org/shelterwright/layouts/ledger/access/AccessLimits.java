package org.shelterwright.layouts.ledger.access;

import java.util.List;
import org.shelterwright.layouts.ledger.Limit;

/** The limits of the subject access. */
public final class AccessLimits {
    private AccessLimits() {}

    public static List<Limit> all() {
        return List.of(
                new ZonesFree(),
                new ZonesInside(),
                new SeatsApart(),
                new SeatHeadroom(),
                new ExitZonesUncrossed(),
                new OpeningSwingsFree(),
                new PartsSecured(),
                new Walkways(),
                new WayOut(),
                new ExitCount(),
                new ExitSize(),
                new ExitCeiling(),
                new HighestControl(),
                new ElectricSpace(),
                new RackFront(),
                new DrawerFront(),
                new WorkPlaceSpace(),
                new SplitAisle());
    }
}

package org.shelterwright.layouts.ledger.racks;

import java.util.List;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.restraint.Fasteners;

/** The limits of the subject racks. */
public final class RackLimits {
    private RackLimits() {}

    /** @param fasteners the bolts whose strength is known */
    public static List<Limit> all(Fasteners fasteners) {
        return List.of(
                new PiecesPlaced(),
                new OwnUnits(),
                new UnitsFree(),
                new BayMass(),
                new RailMass(),
                new CentreLow(),
                new HeavyLow(),
                new RearHold(),
                new Depth(),
                new StripLoad(),
                new PowerStated(),
                new AirHeat(),
                new AirPath(),
                new SlideRoom(),
                new SlideTipping(fasteners),
                new SlidesSecured(),
                new AtHeight());
    }
}

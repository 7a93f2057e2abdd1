package org.shelterwright.layouts.ledger.mass;

import java.util.List;
import org.shelterwright.layouts.ledger.Limit;

/** The limits of the subject mass. */
public final class MassLimits {
    private MassLimits() {}

    public static List<Limit> all() {
        return List.of(
                new BodyGrossMass(),
                new VehicleGrossMass(),
                new CentreAlong(),
                new CentreAcross(),
                new CentreHeight(),
                new DataGaps());
    }
}

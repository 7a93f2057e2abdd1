package org.shelterwright.layouts.ledger.mass;

import java.util.List;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.Extreme;
import org.shelterwright.layouts.state.Gap;
import org.shelterwright.layouts.state.LoadStates;
import org.shelterwright.layouts.state.Quantity;
import org.shelterwright.layouts.state.VehicleLoads;

/**
 * The laden carrier, and the laden trailer, weigh no more than their gross rating less the reserve. What a trailer puts on the
 * coupling counts for the carrier too.
 *
 * <p>Source: the gross ratings of carrier and trailer in the catalog.
 */
final class VehicleGrossMass extends NamedLimit implements Limit.OfTotals {
    VehicleGrossMass() {
        super(
                "mass.vehicle-gross",
                Subject.MASS,
                "Gross mass of the carrier",
                Severity.HARD,
                Source.stated("Catalog", "gross rating of the carrier"),
                "The brief names no carrier.");
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        LoadStates states = LoadStates.of(scene);
        for (VehicleLoads vehicle : VehicleLoads.all(scene)) {
            String name = vehicle.vehicle().name();
            RowDraft draft = rows.draft(this, "Gross mass of " + name);
            Quantity mass = vehicle.mass();
            Extreme most = states.most(mass, vehicle.modes());
            rows.add(row(draft, scene, vehicle, most, states.gaps(mass)));
        }
    }

    private static Row row(RowDraft draft, Scene scene, VehicleLoads vehicle, Extreme most, List<Gap> gaps) {
        String name = vehicle.vehicle().name();
        Double ratingKg = vehicle.vehicle().grossRatingKg();
        String why = vehicle.whyNotStanding().orElse(null);
        if (why != null) {
            return draft.notAssessed("What stands on " + name + " cannot be told: " + why + ".");
        }
        return ratingKg == null
                ? draft.notAssessed("The carrier " + name + " has no gross rating. Give grossRatingKg in carrier "
                        + vehicle.vehicle().id() + ". It weighs " + Amounts.kg(most.worst()) + " when laden.")
                : GrossRow.of(draft, scene, "The laden " + name, most, ratingKg, gaps);
    }
}

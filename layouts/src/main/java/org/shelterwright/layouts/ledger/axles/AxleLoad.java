package org.shelterwright.layouts.ledger.axles;

import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.mass.LoadRow;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.VehicleLoads;

/**
 * Each axle bears no more than its rating in any load state: {@code tare + Σ m s(x) ≤ R}, with the share s of the axle in a
 * mass at x by statics (see {@link org.shelterwright.layouts.state.AxleStatics}).
 *
 * <p>Source: the axle ratings of the carrier in the catalog.
 */
final class AxleLoad extends VehicleLimit {
    AxleLoad() {
        super(
                "axles.axle-load",
                "Axle loads",
                Source.stated("Catalog", "axle ratings of the carrier"),
                "The brief names no carrier.");
    }

    @Override
    void assess(Scene scene, VehicleLoads vehicle, Rows rows) {
        eachAxle(vehicle, (i, axle) -> {
            String name = name(vehicle, axle);
            RowDraft draft = rows.draft(this, "Load of " + name);
            if (!vehicle.isTrailer()) {
                draft.place(place(vehicle, axle));
            }
            Double ratingKg = axle.ratingKg();
            rows.add(
                    ratingKg == null
                            ? draft.notAssessed("The " + name + " has no rating. Give ratingKg in carrier "
                                    + vehicle.vehicle().id() + ".")
                            : LoadRow.atMost(
                                    draft,
                                    scene,
                                    vehicle.axleLoad(i),
                                    vehicle.modes(),
                                    ratingKg,
                                    "The " + name + " bears",
                                    ""));
        });
    }
}

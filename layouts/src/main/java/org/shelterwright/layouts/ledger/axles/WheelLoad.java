package org.shelterwright.layouts.ledger.axles;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.carrier.Axle;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.mass.LoadRow;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.VehicleLoads;

/**
 * The wheels of each side of an axle bear no more than their rating, or half the axle's: {@code load/2 ± Σ m s(x) y / t ≤ W},
 * with y from the middle plane and track t.
 *
 * <p>Source: the wheel and axle ratings of the carrier in the catalog.
 */
final class WheelLoad extends VehicleLimit {
    WheelLoad() {
        super(
                "axles.wheel-load",
                "Wheel loads",
                Source.stated("Catalog", "wheel and axle ratings of the carrier"),
                "The brief names no carrier.");
    }

    @Override
    void assess(Scene scene, VehicleLoads vehicle, Rows rows) {
        eachAxle(vehicle, (i, axle) -> {
            for (boolean left : new boolean[] {true, false}) {
                String name = (left ? "left" : "right") + " wheels of " + name(vehicle, axle);
                RowDraft draft = rows.draft(this, "Load of " + name);
                if (!vehicle.isTrailer()) {
                    draft.place(place(vehicle, axle));
                }
                Double ratingKg = rating(axle);
                rows.add(
                        ratingKg == null
                                ? draft.notAssessed("The " + name + " have no rating. Give wheelRatingKg or ratingKg in"
                                        + " carrier " + vehicle.vehicle().id() + ".")
                                : LoadRow.atMost(
                                        draft,
                                        scene,
                                        vehicle.wheelLoad(i, left),
                                        vehicle.modes(),
                                        ratingKg,
                                        "The " + name + " bear",
                                        ""));
            }
        });
    }

    private static @Nullable Double rating(Axle axle) {
        Double axleKg = axle.ratingKg();
        Double wheelKg = axle.wheelRatingKg();
        return wheelKg != null || axleKg == null ? wheelKg : Double.valueOf(axleKg / 2);
    }
}

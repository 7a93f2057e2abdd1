package org.shelterwright.layouts.ledger.axles;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.carrier.Carrier.Kind;
import org.shelterwright.catalog.carrier.Coupling;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.mass.LoadRow;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.VehicleLoads;

/**
 * A centre-axle trailer puts no more on the coupling than both of its halves bear, and no less than the least one stated:
 * {@code least ≤ Σ m (x − x_axle) / (x_coupling − x_axle) ≤ V}.
 *
 * <p>Source: coupling ratings in the catalog.
 */
final class CouplingLoad extends VehicleLimit {
    CouplingLoad() {
        super(
                "axles.coupling-load",
                "Vertical load on the coupling",
                Source.stated("Catalog", "coupling ratings of carrier and trailer"),
                "The brief has no trailer that loads its coupling.");
    }

    @Override
    void assess(Scene scene, VehicleLoads vehicle, Rows rows) {
        Coupling own = vehicle.vehicle().coupling();
        if (!vehicle.isTrailer() || vehicle.vehicle().kind() != Kind.CENTRE_AXLE_TRAILER || own == null) {
            return;
        }
        Coupling other = VehicleLoads.carrier(scene)
                .map(carrier -> carrier.vehicle().coupling())
                .orElse(null);
        String what = "The trailer " + vehicle.vehicle().name() + " puts on its coupling";
        Double most = lower(own.verticalRatingKg(), other == null ? null : other.verticalRatingKg());
        RowDraft draft = rows.draft(this);
        rows.add(
                most == null
                        ? draft.notAssessed(
                                "No vertical rating of the coupling is known. Give verticalRatingKg in carrier "
                                        + vehicle.vehicle().id() + ".")
                        : LoadRow.atMost(draft, scene, vehicle.couplingLoad(), vehicle.roadModes(), most, what, ""));
        Double least = own.leastVerticalKg();
        if (least != null) {
            rows.add(LoadRow.atLeast(
                    rows.draft(this, "Least vertical load on the coupling"),
                    scene,
                    vehicle.couplingLoad(),
                    vehicle.roadModes(),
                    least,
                    what));
        }
    }

    private static @Nullable Double lower(@Nullable Double a, @Nullable Double b) {
        return a == null || b == null ? (a == null ? b : a) : Double.valueOf(Math.min(a, b));
    }
}

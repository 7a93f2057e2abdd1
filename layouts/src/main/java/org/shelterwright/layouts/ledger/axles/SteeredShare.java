package org.shelterwright.layouts.ledger.axles;

import org.shelterwright.catalog.carrier.Axle;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.Quantity;
import org.shelterwright.layouts.state.VehicleLoads;

/**
 * The steered axles of the carrier bear at least a share of its mass, in every load state on the road: {@code Σ loads of steered
 * axles / mass ≥ s}.
 */
final class SteeredShare extends AxleShare {
    SteeredShare() {
        super("steered", Figure.STEERED_SHARE, Axle::steered);
    }

    @Override
    Quantity mass(Scene scene, VehicleLoads vehicle) {
        return vehicle.mass();
    }
}

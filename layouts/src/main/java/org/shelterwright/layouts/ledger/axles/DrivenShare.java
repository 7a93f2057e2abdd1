package org.shelterwright.layouts.ledger.axles;

import org.shelterwright.catalog.carrier.Axle;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.Quantity;
import org.shelterwright.layouts.state.VehicleLoads;

/**
 * The driven axles bear at least a share of the mass of the vehicle or combination, in every load state on the road: {@code Σ
 * loads of driven axles / mass, trailer included ≥ s}.
 */
final class DrivenShare extends AxleShare {
    DrivenShare() {
        super("driven", Figure.DRIVEN_SHARE, Axle::driven);
    }

    @Override
    Quantity mass(Scene scene, VehicleLoads vehicle) {
        return VehicleLoads.combination(scene).orElse(vehicle.mass());
    }
}

package org.shelterwright.layouts.ledger.stability;

import java.util.Optional;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.Extreme;
import org.shelterwright.layouts.state.LoadStates;
import org.shelterwright.layouts.state.Quantity;
import org.shelterwright.layouts.state.VehicleLoads;

/**
 * Tangent of the tilt at which a vehicle tips over its left or right wheels: {@code (T/2 ∓ y) / h}, the lesser one over all load
 * states.
 *
 * @param carrier empty if there is none or its height cannot be told
 */
record Tipping(Optional<Extreme> carrier, Optional<Extreme> trailer) {
    static Optional<Extreme> of(Scene scene, VehicleLoads vehicle) {
        Tipping both = scene.derived(Tipping.class, Tipping::make);
        return vehicle.isTrailer() ? both.trailer : both.carrier;
    }

    private static Tipping make(Scene scene) {
        return new Tipping(
                VehicleLoads.carrier(scene).flatMap(one -> tangent(scene, one)),
                VehicleLoads.trailer(scene).flatMap(one -> tangent(scene, one)));
    }

    private static Optional<Extreme> tangent(Scene scene, VehicleLoads vehicle) {
        LoadStates states = LoadStates.of(scene);
        Quantity half = vehicle.mass().times(StabilityLimit.leastTrack(vehicle) / 2);
        Quantity height = vehicle.heightMoment();
        Optional<Extreme> left = states.leastRatio(half.minus(vehicle.sideMoment()), height, vehicle.modes());
        Optional<Extreme> right = states.leastRatio(half.plus(vehicle.sideMoment()), height, vehicle.modes());
        return left.flatMap(one -> right.map(other -> one.worst() <= other.worst() ? one : other));
    }
}

package org.shelterwright.layouts.ledger.stability;

import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.Quantity;
import org.shelterwright.layouts.state.VehicleLoads;

/**
 * Angle at which the vehicle tips sideways on a tilt table: {@code atan((T/2 − |y|) / h)}, with the least track T and the centre
 * of mass at y from the middle plane and h above ground; the lesser of both sides.
 */
final class TiltAngle extends StabilityLimit {
    TiltAngle() {
        super(
                "stability.tilt-angle",
                "Tilt angle",
                Source.commonPractice("Rigid body tips where its centre of mass passes over its outer wheels"),
                Figure.TILT_ANGLE);
    }

    @Override
    Quantity[] needed(VehicleLoads vehicle) {
        return new Quantity[] {vehicle.mass(), vehicle.heightMoment(), vehicle.sideMoment()};
    }

    @Override
    Row row(RowDraft draft, Scene scene, VehicleLoads vehicle, double neededDegrees) {
        return rowOf(draft, tippingTangent(scene, vehicle), least -> {
            double degrees = Math.toDegrees(Math.atan(least.worst()));
            if (degrees < neededDegrees) {
                draft.mend("Put heavy units lower and nearer to the middle plane.");
            }
            return draft.state(least.state().text())
                    .nominal(Math.toDegrees(Math.atan(least.nominal())))
                    .atLeast(
                            neededDegrees,
                            degrees,
                            "°",
                            vehicle.vehicle().name() + " tips at " + Amounts.number(degrees, 1) + "° on rigid springs,"
                                    + " and must stand " + Amounts.number(neededDegrees, 1) + "°.");
        });
    }
}

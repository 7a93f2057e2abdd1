package org.shelterwright.layouts.ledger.stability;

import java.util.Optional;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.Extreme;
import org.shelterwright.layouts.state.LoadStates;
import org.shelterwright.layouts.state.Quantity;
import org.shelterwright.layouts.state.VehicleLoads;

/**
 * Grade on which the carrier still stands without tipping over its outer axles, as rise over run, uphill and downhill: {@code
 * (x − x_rear) / h} and {@code (x_front − x) / h}.
 */
final class Grade extends StabilityLimit {
    Grade() {
        super(
                "stability.grade",
                "Grade",
                Source.commonPractice("Rigid body tips where its centre of mass passes over its outer axle"),
                Figure.GRADE);
    }

    @Override
    Quantity[] needed(VehicleLoads vehicle) {
        return new Quantity[] {vehicle.mass(), vehicle.heightMoment(), vehicle.lengthMoment()};
    }

    @Override
    boolean concerns(VehicleLoads vehicle) {
        return !vehicle.isTrailer();
    }

    @Override
    Row row(RowDraft draft, Scene scene, VehicleLoads vehicle, double needed) {
        LoadStates states = LoadStates.of(scene);
        Quantity along = vehicle.lengthMoment();
        Quantity uphill = along.minus(vehicle.mass().times(outerAxle(vehicle, true)));
        Quantity downhill = vehicle.mass().times(outerAxle(vehicle, false)).minus(along);
        Optional<Extreme> up = states.leastRatio(uphill, vehicle.heightMoment(), vehicle.modes());
        Optional<Extreme> down = states.leastRatio(downhill, vehicle.heightMoment(), vehicle.modes());
        boolean upGoverns = up.isPresent()
                && down.isPresent()
                && up.get().worst() <= down.get().worst();
        return rowOf(draft, upGoverns ? up : down, least -> {
            if (least.worst() < needed) {
                draft.mend("Move mass " + (upGoverns ? "forward" : "to the rear") + ", or lower.");
            }
            return draft.state(least.state().text())
                    .nominal(least.nominal())
                    .atLeast(
                            needed,
                            least.worst(),
                            "share",
                            vehicle.vehicle().name() + (upGoverns ? " facing uphill" : " facing downhill")
                                    + " tips on a grade of " + Amounts.percent(least.worst()) + ", and must stand on "
                                    + Amounts.percent(needed) + ".");
        });
    }
}

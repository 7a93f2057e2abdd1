package org.shelterwright.layouts.ledger.stability;

import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.Quantity;
import org.shelterwright.layouts.state.VehicleLoads;

/** Side slope on which the vehicle still stands, as rise over run: {@code (T/2 − |y|) / h}, the lesser of both sides. */
final class SideSlope extends StabilityLimit {
    SideSlope() {
        super(
                "stability.side-slope",
                "Side slope",
                Source.commonPractice("Rigid body tips where its centre of mass passes over its outer wheels"),
                Figure.SIDE_SLOPE);
    }

    @Override
    Quantity[] needed(VehicleLoads vehicle) {
        return new Quantity[] {vehicle.mass(), vehicle.heightMoment(), vehicle.sideMoment()};
    }

    @Override
    Row row(RowDraft draft, Scene scene, VehicleLoads vehicle, double needed) {
        return rowOf(draft, tippingTangent(scene, vehicle), least -> {
            if (least.worst() < needed) {
                draft.mend("Put heavy units lower and nearer to the middle plane.");
            }
            return draft.state(least.state().text())
                    .nominal(least.nominal())
                    .atLeast(
                            needed,
                            least.worst(),
                            "share",
                            vehicle.vehicle().name() + " tips on a side slope of " + Amounts.percent(least.worst())
                                    + ", and must stand on " + Amounts.percent(needed) + ".");
        });
    }
}

package org.shelterwright.layouts.ledger.stability;

import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.LoadStates;
import org.shelterwright.layouts.state.VehicleLoads;

/**
 * Static stability factor {@code T / (2 h)}, with the least track T and the height h of the centre of mass above ground, in the
 * load state with the highest centre.
 *
 * <p>Source of the formula: NHTSA, rollover resistance ratings, DOT HS 809 868.
 */
final class StaticFactor extends StabilityLimit {
    StaticFactor() {
        super(
                "stability.static-factor",
                "Static stability factor",
                Source.seen("NHTSA DOT HS 809 868", "static stability factor T/2h"),
                Figure.STATIC_STABILITY_FACTOR);
    }

    @Override
    Row row(RowDraft draft, Scene scene, VehicleLoads vehicle, double needed) {
        double half = leastTrack(vehicle) / 2;
        var height = LoadStates.of(scene).mostRatio(vehicle.heightMoment(), vehicle.mass(), vehicle.modes());
        return rowOf(draft, height.filter(one -> one.worst() > 0), highest -> {
            double factor = half / highest.worst();
            if (factor < needed) {
                draft.mend("Bring the centre of mass " + Amounts.mm(highest.worst() - half / needed) + " lower.");
            }
            return draft.state(highest.state().text())
                    .nominal(half / highest.nominal())
                    .atLeast(
                            needed,
                            factor,
                            "",
                            "The centre of mass of " + vehicle.vehicle().name() + " lies up to "
                                    + Amounts.mm(highest.worst()) + " above ground, on a track of "
                                    + Amounts.mm(2 * half) + ": factor " + Amounts.number(factor, 3) + ", needed "
                                    + Amounts.number(needed, 3) + ".");
        });
    }
}

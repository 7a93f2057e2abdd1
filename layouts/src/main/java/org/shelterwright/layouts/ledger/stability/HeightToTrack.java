package org.shelterwright.layouts.ledger.stability;

import java.util.List;
import org.shelterwright.catalog.carrier.Axle;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.LoadStates;
import org.shelterwright.layouts.state.VehicleLoads;

/** Height of the centre of mass above ground against the track of the rearmost axle of the carrier: {@code h / T ≤ k}. */
final class HeightToTrack extends StabilityLimit {
    HeightToTrack() {
        super(
                "stability.height-to-track",
                "Centre height against track",
                Source.commonPractice("Height of the centre of mass against the rear track"),
                Figure.CENTRE_HEIGHT_TO_TRACK);
    }

    @Override
    boolean concerns(VehicleLoads vehicle) {
        return !vehicle.isTrailer();
    }

    @Override
    Row row(RowDraft draft, Scene scene, VehicleLoads vehicle, double allowed) {
        List<Axle> axles = vehicle.vehicle().axles();
        double track = Lengths.metres(axles.get(axles.size() - 1).track());
        var ratio = LoadStates.of(scene)
                .mostRatio(vehicle.heightMoment(), vehicle.mass().times(track), vehicle.modes());
        return rowOf(draft, ratio, highest -> {
            if (highest.worst() > allowed) {
                draft.mend("Bring the centre of mass " + Amounts.mm((highest.worst() - allowed) * track) + " lower.");
            }
            return draft.state(highest.state().text())
                    .nominal(highest.nominal())
                    .atMost(
                            highest.worst(),
                            allowed,
                            "share",
                            "The centre of mass of " + vehicle.vehicle().name() + " lies up to "
                                    + Amounts.mm(highest.worst() * track) + " above ground, "
                                    + Amounts.percent(highest.worst()) + " of the rear track; allowed are "
                                    + Amounts.percent(allowed) + ".");
        });
    }
}

package org.shelterwright.layouts.ledger.axles;

import java.util.Optional;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mass.LoadRow;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.LoadStates;
import org.shelterwright.layouts.state.VehicleLoads;

/**
 * Carrier and trailer together weigh no more than the rating of the combination, and the trailer no more than the coupling may
 * draw.
 *
 * <p>Source: combination rating of the carrier and drawn rating of its coupling in the catalog.
 */
final class CombinationMass extends NamedLimit implements Limit.OfTotals {
    CombinationMass() {
        super(
                "axles.combination",
                Subject.AXLES,
                "Mass of the combination",
                Severity.HARD,
                Source.stated("Catalog", "combination and drawn ratings of the carrier"),
                "The brief has no trailer.");
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        Optional<VehicleLoads> carrier = VehicleLoads.carrier(scene);
        Optional<VehicleLoads> trailer = VehicleLoads.trailer(scene);
        if (carrier.isPresent() && trailer.isPresent()) {
            rows.add(combination(rows.draft(this), scene, carrier.get()));
            rows.add(drawn(rows.draft(this, "Mass of the drawn trailer"), scene, carrier.get(), trailer.get()));
        }
    }

    private static Row combination(RowDraft draft, Scene scene, VehicleLoads carrier) {
        Double ratingKg = carrier.vehicle().combinationRatingKg();
        if (ratingKg == null) {
            return draft.notAssessed("The carrier " + carrier.vehicle().name() + " has no rating with trailer. Give"
                    + " combinationRatingKg in carrier " + carrier.vehicle().id() + ".");
        }
        return LoadRow.atMost(
                draft,
                scene,
                VehicleLoads.combination(scene).orElse(carrier.mass()),
                LoadStates.of(scene).drawnModes(),
                ratingKg,
                carrier.vehicle().name() + " and trailer weigh",
                "");
    }

    private static Row drawn(RowDraft draft, Scene scene, VehicleLoads carrier, VehicleLoads trailer) {
        var coupling = carrier.vehicle().coupling();
        Double ratingKg = coupling == null ? null : coupling.drawnRatingKg();
        if (ratingKg == null) {
            return draft.notAssessed("The coupling of " + carrier.vehicle().name() + " has no drawn mass. Give"
                    + " drawnRatingKg in carrier " + carrier.vehicle().id() + ".");
        }
        return LoadRow.atMost(
                draft,
                scene,
                trailer.ownMass(),
                trailer.roadModes(),
                ratingKg,
                "The trailer " + trailer.vehicle().name() + " weighs",
                "");
    }
}

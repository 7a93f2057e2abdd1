package org.shelterwright.layouts.ledger.axles;

import java.util.Optional;
import org.shelterwright.catalog.carrier.Axle;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rule;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.VehicleLoads;

/**
 * The steered axles of the carrier bear at least a share of its mass, in every load state on the road: {@code Σ loads of steered
 * axles / mass ≥ s}.
 */
final class SteeredShare extends VehicleLimit {
    SteeredShare() {
        super(
                "axles.steered-share",
                "Share on the steered axles",
                Source.stated("Brief", Figure.STEERED_SHARE.id()),
                "The brief names no carrier.");
    }

    @Override
    void assess(Scene scene, VehicleLoads vehicle, Rows rows) {
        if (vehicle.isTrailer()) {
            return;
        }
        RowDraft draft = rows.draft(this);
        Optional<Rule> rule = scene.rules().rule(Figure.STEERED_SHARE);
        if (rule.isEmpty()) {
            rows.add(draft.notAssessed("No rule set states " + Figure.STEERED_SHARE.id()
                    + ". Choose one that does, or set it in the brief."));
            return;
        }
        rows.add(RatioRow.atLeast(
                draft.source(rule.get().source()),
                scene,
                vehicle.axleLoads(Axle::steered),
                vehicle.mass(),
                vehicle.roadModes(),
                rule.get().value(),
                "The steered axles of " + vehicle.vehicle().name() + " bear"));
    }
}

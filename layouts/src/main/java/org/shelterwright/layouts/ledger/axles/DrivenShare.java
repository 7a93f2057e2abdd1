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
 * The driven axles bear at least a share of the mass of the vehicle or combination, in every load state on the road: {@code Σ
 * loads of driven axles / mass, trailer included ≥ s}.
 */
final class DrivenShare extends VehicleLimit {
    DrivenShare() {
        super(
                "axles.driven-share",
                "Share on the driven axles",
                Source.stated("Brief", Figure.DRIVEN_SHARE.id()),
                "The brief names no carrier.");
    }

    @Override
    void assess(Scene scene, VehicleLoads vehicle, Rows rows) {
        if (vehicle.isTrailer()) {
            return;
        }
        RowDraft draft = rows.draft(this);
        Optional<Rule> rule = scene.rules().rule(Figure.DRIVEN_SHARE);
        if (rule.isEmpty()) {
            rows.add(draft.notAssessed("No rule set states " + Figure.DRIVEN_SHARE.id()
                    + ". Choose one that does, or set it in the brief."));
            return;
        }
        rows.add(RatioRow.atLeast(
                draft.source(rule.get().source()),
                scene,
                vehicle.axleLoads(Axle::driven),
                VehicleLoads.combination(scene).orElse(vehicle.mass()),
                vehicle.roadModes(),
                rule.get().value(),
                "The driven axles of " + vehicle.vehicle().name() + " bear"));
    }
}

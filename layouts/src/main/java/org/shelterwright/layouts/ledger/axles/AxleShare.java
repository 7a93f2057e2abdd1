package org.shelterwright.layouts.ledger.axles;

import java.util.Optional;
import java.util.function.Predicate;
import org.shelterwright.catalog.carrier.Axle;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rule;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.Quantity;
import org.shelterwright.layouts.state.VehicleLoads;

/** Some axles of the carrier bear at least a share of a mass, in every load state on the road: {@code Σ loads of them / mass ≥ s}. */
abstract class AxleShare extends VehicleLimit {
    private final String word;
    private final Figure figure;
    private final Predicate<Axle> which;

    /**
     * Names a limit.
     *
     * @param word what the axles are, such as "steered"
     * @param figure the least share
     */
    AxleShare(String word, Figure figure, Predicate<Axle> which) {
        super(
                "axles." + word + "-share",
                "Share on the " + word + " axles",
                Source.stated("Brief", figure.id()),
                "The brief names no carrier.");
        this.word = word;
        this.figure = figure;
        this.which = which;
    }

    /** The mass of which they bear a share. */
    abstract Quantity mass(Scene scene, VehicleLoads vehicle);

    @Override
    final void assess(Scene scene, VehicleLoads vehicle, Rows rows) {
        if (vehicle.isTrailer()) {
            return;
        }
        RowDraft draft = rows.draft(this);
        Optional<Rule> rule = scene.rules().rule(figure);
        if (rule.isEmpty()) {
            rows.add(draft.notAssessed(
                    "No rule set states " + figure.id() + ". Choose one that does, or set it in the brief."));
            return;
        }
        rows.add(RatioRow.atLeast(
                draft.source(rule.get().source()),
                scene,
                vehicle.axleLoads(which),
                mass(scene, vehicle),
                vehicle.roadModes(),
                rule.get().value(),
                "The " + word + " axles of " + vehicle.vehicle().name() + " bear"));
    }
}

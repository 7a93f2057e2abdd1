package org.shelterwright.layouts.ledger.stability;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import org.shelterwright.catalog.carrier.Axle;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.NamedLimit;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.mass.GapRow;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rule;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.Extreme;
import org.shelterwright.layouts.state.Gap;
import org.shelterwright.layouts.state.LoadStates;
import org.shelterwright.layouts.state.Quantity;
import org.shelterwright.layouts.state.VehicleLoads;

/** A limit on how far a vehicle is from tipping, against a figure of the rules. */
abstract class StabilityLimit extends NamedLimit implements Limit.OfTotals {
    private final Figure figure;

    StabilityLimit(String id, String title, Source source, Figure figure) {
        super(id, Subject.STABILITY, title, Severity.HARD, source, "The brief names no carrier.");
        this.figure = figure;
    }

    /** The row of one vehicle of which everything is known. */
    abstract Row row(RowDraft draft, Scene scene, VehicleLoads vehicle, double allowed);

    /** Quantities that must be known. */
    Quantity[] needed(VehicleLoads vehicle) {
        return new Quantity[] {vehicle.mass(), vehicle.heightMoment()};
    }

    /** Whether the limit makes sense for a vehicle. */
    boolean concerns(VehicleLoads vehicle) {
        return true;
    }

    @Override
    public void assess(Scene scene, Rows rows) {
        LoadStates states = LoadStates.of(scene);
        Optional<Rule> rule = scene.rules().rule(figure);
        for (VehicleLoads vehicle : VehicleLoads.all(scene)) {
            if (concerns(vehicle)) {
                RowDraft draft =
                        rows.draft(this, title() + " of " + vehicle.vehicle().name());
                List<Gap> gaps = states.gaps(needed(vehicle));
                if (rule.isEmpty()) {
                    rows.add(draft.notAssessed(
                            "No rule set states " + figure.id() + ". Choose one that does, or set it in the brief."));
                } else if (vehicle.whyNotStanding().isPresent()) {
                    rows.add(draft.notAssessed(
                            "What stands on " + vehicle.vehicle().name() + " cannot be told: "
                                    + vehicle.whyNotStanding().orElse("") + "."));
                } else if (!gaps.isEmpty()) {
                    rows.add(GapRow.of(draft, gaps));
                } else {
                    rows.add(row(
                            draft.source(rule.get().source()),
                            scene,
                            vehicle,
                            rule.get().value()));
                }
            }
        }
    }

    /** What remains at the worst of a ratio, or a row that says why there is none. */
    static Row rowOf(RowDraft draft, Optional<Extreme> extreme, Function<Extreme, Row> row) {
        return extreme.map(row)
                .orElseGet(() -> draft.notAssessed("The centre of mass lies on or below the ground, which cannot be."));
    }

    /** The least track of all axles (m). */
    static double leastTrack(VehicleLoads vehicle) {
        return Lengths.metres(extreme(vehicle, Axle::track, true));
    }

    /** Place of the axle that is foremost or rearmost (m). */
    static double outerAxle(VehicleLoads vehicle, boolean rear) {
        return Lengths.metres(extreme(vehicle, Axle::x, rear));
    }

    /**
     * Tangent of the tilt at which the vehicle tips over its left or right wheels: {@code (t/2 ∓ y)/h}.
     *
     * @return the lesser one over all load states
     */
    static Optional<Extreme> tippingTangent(Scene scene, VehicleLoads vehicle) {
        LoadStates states = LoadStates.of(scene);
        Quantity half = vehicle.mass().times(leastTrack(vehicle) / 2);
        Quantity height = vehicle.heightMoment();
        Optional<Extreme> left = states.leastRatio(half.minus(vehicle.sideMoment()), height, vehicle.modes());
        Optional<Extreme> right = states.leastRatio(half.plus(vehicle.sideMoment()), height, vehicle.modes());
        return left.flatMap(one -> right.map(other -> one.worst() <= other.worst() ? one : other));
    }

    private static int extreme(VehicleLoads vehicle, ToIntFunction<Axle> of, boolean least) {
        var values = vehicle.vehicle().axles().stream().mapToInt(of);
        return (least ? values.min() : values.max()).orElse(0);
    }
}

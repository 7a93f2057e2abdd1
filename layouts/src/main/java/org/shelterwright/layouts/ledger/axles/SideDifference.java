package org.shelterwright.layouts.ledger.axles;

import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.carrier.Axle;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.mass.GapRow;
import org.shelterwright.layouts.ledger.mass.ShiftMend;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rule;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.Extreme;
import org.shelterwright.layouts.state.Gap;
import org.shelterwright.layouts.state.LoadStates;
import org.shelterwright.layouts.state.Quantity;
import org.shelterwright.layouts.state.VehicleLoads;

/**
 * The wheels of the left and the right bear nearly alike: {@code |L − R| / (L + R) ≤ d} for each axle of the carrier, in every
 * load state on the road.
 */
final class SideDifference extends VehicleLimit {
    SideDifference() {
        super(
                "axles.side-difference",
                "Left against right",
                Source.stated("Brief", Figure.SIDE_DIFFERENCE.id()),
                "The brief names no carrier.");
    }

    @Override
    void assess(Scene scene, VehicleLoads vehicle, Rows rows) {
        if (vehicle.isTrailer()) {
            return;
        }
        Optional<Rule> rule = scene.rules().rule(Figure.SIDE_DIFFERENCE);
        if (rule.isEmpty()) {
            rows.add(rows.draft(this)
                    .notAssessed("No rule set states " + Figure.SIDE_DIFFERENCE.id()
                            + ". Choose one that does, or set it in the brief."));
            return;
        }
        eachAxle(
                vehicle,
                (i, axle) -> rows.add(row(
                        rows.draft(this, "Left against right on " + name(vehicle, axle))
                                .place(place(vehicle, axle))
                                .source(rule.get().source()),
                        scene,
                        vehicle,
                        i,
                        axle,
                        rule.get().value())));
    }

    private static Row row(RowDraft draft, Scene scene, VehicleLoads vehicle, int number, Axle axle, double allowed) {
        LoadStates states = LoadStates.of(scene);
        Quantity difference = vehicle.halfDifference(number).times(2);
        Quantity load = vehicle.axleLoad(number);
        List<Gap> gaps = states.gaps(difference, load);
        if (!gaps.isEmpty()) {
            return GapRow.of(draft, gaps);
        }
        Optional<Extreme> left = states.mostRatio(difference, load, vehicle.roadModes());
        Optional<Extreme> right = states.mostRatio(difference.times(-1), load, vehicle.roadModes());
        if (left.isEmpty() || right.isEmpty()) {
            return draft.notAssessed("The " + name(vehicle, axle) + " bears nothing in some load state.");
        }
        boolean leftGoverns = left.get().worst() >= right.get().worst();
        Extreme worse = leftGoverns ? left.get() : right.get();
        if (worse.worst() > allowed) {
            double axleKg = states.most(load, List.of(worse.state().mode())).worst();
            double tooMuchKg = (worse.worst() - allowed) * axleKg;
            draft.mend(ShiftMend.of(
                    scene,
                    Axis.Y,
                    leftGoverns ? -tooMuchKg : tooMuchKg,
                    at -> difference.body().perY() + difference.body().perXy() * Lengths.metres(at.x())));
        }
        return draft.state(worse.state().text())
                .nominal(worse.nominal())
                .atMost(
                        worse.worst(),
                        allowed,
                        "share",
                        "The " + (leftGoverns ? "left" : "right") + " wheels of " + name(vehicle, axle)
                                + " bear up to " + Amounts.percent(worse.worst())
                                + " of its load more than the other ones; allowed are " + Amounts.percent(allowed)
                                + ".");
    }
}

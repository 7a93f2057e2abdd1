package org.shelterwright.solver.fit.whynot;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.carrier.Axle;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.ledger.LimitBook;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.fit.kernel.State;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.MomentLimits;
import org.shelterwright.solver.fit.model.Plane;
import org.shelterwright.solver.fit.model.Slot;

/**
 * Bounds of mass: the sum of what is known against the ratings, and for each row on masses and axles the best that any
 * placing could make of it. A tangent of a concave margin lies above it everywhere, so the greatest value of the tangent
 * over all places of all units bounds the margin of every layout.
 */
final class MassBounds {
    /**
     * A bound must fall short by at least this much, so that rounding never passes for a proof: 5 kg in a row that is told in kg,
     * 5 mm in one that is told in mm (thousandths of the unit of the row).
     */
    private static final double CLEARLY = 5_000;

    /** What places change at most in a row that does not depend on them: 0.5 kg or 0.5 mm (thousandths). */
    private static final double NOTHING = 500;

    private final FitProblem problem;
    private final Scene scene;
    private final LimitBook book;
    private final Layout best;

    MassBounds(FitProblem problem, LimitBook book, Layout best) {
        this.problem = problem;
        this.scene = problem.scene();
        this.book = book;
        this.best = best;
    }

    List<String> reasons() {
        List<String> reasons = new ArrayList<>();
        double unitsKg = 0;
        for (UnitSpec unit : scene.brief().units()) {
            Double massKg =
                    scene.filled(unit, Situation.ON_THE_ROAD).mass().massKg();
            unitsKg += massKg == null ? 0 : massKg;
        }
        Body body = scene.body();
        Double tare = body.tare().massKg();
        double filledKg = unitsKg + (tare == null ? 0 : tare);
        double share = 1 - scene.rules().valueOr(Figure.MASS_RESERVE, 0);
        compare("The filled body " + body.name(), filledKg, body.grossRatingKg(), share, reasons);
        scene.carrier().ifPresent(carrier -> {
            double ladenKg = filledKg
                    + carrier.axles().stream().mapToDouble(Axle::tareKg).sum();
            compare("The laden " + carrier.name(), ladenKg, carrier.grossRatingKg(), share, reasons);
        });
        if (reasons.isEmpty()
                && best.placements().size() == scene.brief().units().size()) {
            moments(reasons);
        }
        return reasons;
    }

    private static void compare(
            String what, double leastKg, @Nullable Double ratingKg, double share, List<String> reasons) {
        if (ratingKg != null && leastKg > ratingKg * share) {
            reasons.add(String.format(
                    Locale.ROOT,
                    "%s weighs at least %.0f kg without growth, tanks and crew, but may weigh %.0f kg: leave out at least"
                            + " %.0f kg.",
                    what,
                    leastKg,
                    ratingKg * share,
                    leastKg - ratingKg * share));
        }
    }

    private void moments(List<String> reasons) {
        FitProblem placed = FitProblem.of(Scene.of(best, scene.rules()));
        State state = new State(placed);
        state.restore(placed.start());
        MomentLimits.Register register = new MomentLimits.Register();
        List<Plane> planes = new MomentLimits(book)
                .tangents(Scene.of(best, scene.rules()), state.moments(true), state.moments(false), register);
        for (Plane plane : planes) {
            String name = register.name(plane.row());
            double bound = plane.constant();
            for (Slot slot : problem.slots()) {
                if (slot.in(plane.onStation() ? Situation.ON_STATION : Situation.ON_THE_ROAD)) {
                    bound += most(plane, slot);
                }
            }
            if (bound < -CLEARLY && register.plain(plane.row())) {
                reasons.add(sentence(name, -bound / 1000, register.unit(plane.row()), spread(plane) < NOTHING));
            }
        }
    }

    /** Such as: Load of rear axle: misses its limit by at least 261 kg, even with ... */
    static String sentence(String name, double amount, String unit, boolean anywhere) {
        return String.format(
                Locale.ROOT,
                anywhere
                        ? "%s: misses its limit by at least %.0f %s wherever the units stand. Leave out units or take lighter"
                                + " ones."
                        : "%s: misses its limit by at least %.0f %s even if every unit stood at the end of the body that"
                                + " helps most. Leave out units, take lighter ones, or use another body or carrier.",
                name,
                amount,
                unit);
    }

    /** How much the places of the units can change a tangent at most. */
    private double spread(Plane plane) {
        double spread = 0;
        for (Slot slot : problem.slots()) {
            Double massKg = slot.item().mass().massKg();
            double grams = massKg == null ? 0 : massKg * 1000;
            double x = problem.inside().x();
            double y = problem.inside().y();
            spread += grams
                    * (Math.abs(plane.x()) * x
                            + Math.abs(plane.y()) * y
                            + Math.abs(plane.z()) * problem.inside().z()
                            + Math.abs(plane.xy()) * (x / 1000) * (y / 1000));
        }
        return spread;
    }

    /** The most that a unit can add to a tangent, anywhere in the body. */
    private double most(Plane plane, Slot slot) {
        Double massKg = slot.item().mass().massKg();
        double grams = massKg == null ? 0 : Math.round(massKg * 1000);
        double most = Double.NEGATIVE_INFINITY;
        for (double x : ends(slot, 0)) {
            for (double y : ends(slot, 1)) {
                for (double z : ends(slot, 2)) {
                    double value = grams
                            * (plane.x() * x + plane.y() * y + plane.z() * z + plane.xy() * (x / 1000) * (y / 1000));
                    most = Math.max(most, value);
                }
            }
        }
        return most;
    }

    /** Least and greatest coordinate of its centre of mass inside the body. */
    private double[] ends(Slot slot, int axis) {
        Point local = slot.item().mass().centre() == null
                ? slot.item().size().box().centre()
                : slot.item().mass().centre();
        double low = Double.MAX_VALUE;
        double high = -Double.MAX_VALUE;
        for (QuarterTurn turn : slot.item().turns()) {
            Point centre = turn.apply(local, slot.item().size());
            int[] at = {centre.x(), centre.y(), centre.z()};
            var size = turn.apply(slot.item().size());
            int[] sizes = {size.x(), size.y(), size.z()};
            int[] inside = {
                problem.inside().x(), problem.inside().y(), problem.inside().z()
            };
            low = Math.min(low, at[axis]);
            high = Math.max(high, inside[axis] - sizes[axis] + at[axis]);
        }
        return new double[] {low, Math.max(low, high)};
    }
}

package org.shelterwright.layouts.ledger.lifting;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Provision;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rules;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.state.Gap;
import org.shelterwright.layouts.state.LoadStates;

/**
 * How the filled body hangs on a crane, on the road, in its heaviest load state, with its centre anywhere in its range.
 *
 * @param massKg greatest mass (kg)
 * @param state load state of the greatest mass
 * @param lowX range of the centre of mass (m)
 * @param highX range of the centre of mass (m)
 * @param lowY range of the centre of mass (m)
 * @param highY range of the centre of mass (m)
 * @param highZ greatest height of the centre above the floor (m)
 * @param legs by eye
 * @param hookHeight height of the hook above the eyes (m), with the centre in the middle of its range
 * @param leastAngle angle of the flattest leg above the level (degrees)
 * @param tilt tilt if it hangs on four equal legs instead (degrees)
 * @param offM greatest distance of the centre from the middle of the eyes (m)
 * @param allowedM distance to which the centre may go that way before an eye is overloaded (m); {@code null} if a rating is missing
 */
public record LiftPlan(
        double massKg,
        String state,
        double lowX,
        double highX,
        double lowY,
        double highY,
        double highZ,
        List<Leg> legs,
        double hookHeight,
        double leastAngle,
        double tilt,
        double offM,
        @Nullable Double allowedM) {
    /**
     * One leg with its eye, in its worst case.
     *
     * @param share of the weight
     * @param angle above the level (degrees)
     * @param lengthM from hook to eye (m)
     * @param forceN force in it (N)
     */
    public record Leg(Provision eye, double share, double angle, double lengthM, double forceN) {}

    public LiftPlan {
        legs = List.copyOf(legs);
    }

    /** Plan of a scene, or why there is none. */
    record Made(@Nullable LiftPlan plan, List<Gap> gaps, String missing) {}

    /** The plan of a scene; empty if something is missing for it. */
    public static Optional<LiftPlan> of(Scene scene) {
        return Optional.ofNullable(made(scene).plan());
    }

    static Made made(Scene scene) {
        return scene.derived(Made.class, LiftPlan::make);
    }

    private static Made make(Scene scene) {
        FourProvisions eyes = FourProvisions.eyes(scene.body()).orElse(null);
        if (eyes == null) {
            return new Made(
                    null,
                    List.of(),
                    "The body " + scene.body().name()
                            + " states no four lifting eyes at the corners of a level rectangle.");
        }
        for (Figure figure : List.of(Figure.LIFT_DYNAMIC_FACTOR, Figure.SLING_ANGLE)) {
            if (scene.rules().rule(figure).isEmpty()) {
                return new Made(
                        null, List.of(), "No value is set for \"" + figure.meaning() + "\" (" + figure.id() + ").");
            }
        }
        LoadStates states = LoadStates.of(scene);
        List<Gap> gaps = LiftedMass.gaps(states);
        Optional<LiftedMass> range = gaps.isEmpty() ? LiftedMass.of(states) : Optional.empty();
        return range.map(found -> new Made(plan(scene.rules(), eyes, found), List.of(), ""))
                .orElseGet(() -> new Made(null, gaps, LiftedMass.NO_MASS));
    }

    private static LiftPlan plan(Rules rules, FourProvisions eyes, LiftedMass range) {
        FourPoints points = eyes.points();
        double weightN = range.massKg() * LiftedMass.STANDARD_GRAVITY * rules.valueOr(Figure.LIFT_DYNAMIC_FACTOR, 1);
        Leg[] worst = new Leg[4];
        double leastAngle = 90;
        double[] farthest = {points.middleX(), points.middleY()};
        double offM = -1;
        for (double x : range.x()) {
            for (double y : range.y()) {
                Sling sling = sling(rules, points, x, y);
                leastAngle = Math.min(leastAngle, Math.toDegrees(sling.leastAngle()));
                for (int i = 0; i < 4; i++) {
                    double forceN = sling.hookHeight() == 0 ? Double.MAX_VALUE : sling.legN(i, weightN);
                    if (worst[i] == null || forceN > worst[i].forceN()) {
                        double angle = Math.toDegrees(sling.angle(i));
                        worst[i] = new Leg(eyes.all().get(i), sling.share(i), angle, sling.legLength(i), forceN);
                    }
                }
                double off = Math.hypot(x - points.middleX(), y - points.middleY());
                if (off > offM) {
                    offM = off;
                    farthest = new double[] {x, y};
                }
            }
        }
        double middleX = (range.x()[0] + range.x()[1]) / 2;
        double middleY = (range.y()[0] + range.y()[1]) / 2;
        double hook = sling(rules, points, middleX, middleY).hookHeight();
        double equal = sling(rules, points, points.middleX(), points.middleY()).hookHeight();
        double tilt = Math.toDegrees(Math.atan2(offM, equal + eyes.height() - range.highZ()));
        return new LiftPlan(
                range.massKg(),
                range.state(),
                range.x()[0],
                range.x()[1],
                range.y()[0],
                range.y()[1],
                range.highZ(),
                List.of(worst),
                hook,
                leastAngle,
                tilt,
                offM,
                allowed(rules, eyes, farthest, weightN));
    }

    static Sling sling(Rules rules, FourPoints points, double x, double y) {
        double angle = Math.toRadians(rules.valueOr(Figure.SLING_ANGLE, 60));
        var length = rules.value(Figure.SLING_LEG_LENGTH);
        return Sling.of(points, x, y, angle, length.isPresent() ? length.getAsDouble() / 1000 : null);
    }

    /** Goes out from the middle of the eyes through a place, up to where an eye is at its rating or the centre leaves the eyes. */
    private static @Nullable Double allowed(Rules rules, FourProvisions eyes, double[] through, double weightN) {
        FourPoints points = eyes.points();
        double dx = through[0] - points.middleX();
        double dy = through[1] - points.middleY();
        double off = Math.hypot(dx, dy);
        double ux = off == 0 ? 1 : dx / off;
        double uy = off == 0 ? 0 : dy / off;
        double low = 0;
        double high = points.halfDiagonal();
        for (int halving = 0; halving < 40; halving++) {
            double middle = (low + high) / 2;
            double x = points.middleX() + ux * middle;
            double y = points.middleY() + uy * middle;
            boolean held = points.holds(x, y);
            Sling sling = sling(rules, points, x, y);
            for (int i = 0; i < 4; i++) {
                Double rating = eyes.all().get(i).ratingN();
                if (rating == null) {
                    return null;
                }
                held &= sling.hookHeight() > 0 && sling.legN(i, weightN) <= rating;
            }
            if (held) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }
}

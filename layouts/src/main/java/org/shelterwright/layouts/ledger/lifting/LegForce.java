package org.shelterwright.layouts.ledger.lifting;

import java.util.Comparator;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.lifting.LiftPlan.Leg;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.scene.Scene;

/**
 * Every lifting eye bears its leg: {@code φ W s / sin θ ≤ R}, after {@link Sling}, with the rating R of the eye, and the centre of
 * mass stays between the eyes. The largest offset of the centre of mass that it would still bear stands in the row.
 */
final class LegForce extends LiftLimit {
    LegForce() {
        super(
                "lifting.eye",
                "Force on a lifting eye",
                Source.commonPractice("Legs by statics, and two legs across carry all"));
    }

    @Override
    Row row(RowDraft draft, Scene scene, LiftPlan plan) {
        for (Leg leg : plan.legs()) {
            if (leg.eye().ratingN() == null) {
                return draft.mend("State its rating in body " + scene.body().id() + ".")
                        .notAssessed("The rating of " + leg.eye().name() + " is not stated.");
            }
        }
        if (!between(plan)) {
            return draft.mend("Bring the centre of mass between the eyes, or lift the body by a frame.")
                    .atMost(
                            1,
                            0,
                            "",
                            "The centre of mass may lie outside the lifting eyes: no sling holds the body level by"
                                    + " them.");
        }
        Leg worst = plan.legs().stream()
                .max(Comparator.comparingDouble(LegForce::use))
                .orElseThrow();
        double ratingN = rating(worst);
        if (worst.forceN() == Double.MAX_VALUE) {
            return draft.mend("Take longer legs, or clear lifting.leg-length in the brief.")
                    .atMost(1, 0, "", "The sling legs are too short to meet above the body.");
        }
        Double allowed = plan.allowedM();
        String room = allowed == null || allowed == 0
                ? "even with its centre of mass in their middle."
                : "with its centre of mass up to " + Amounts.mm(plan.offM()) + " off their middle; up to "
                        + Amounts.mm(allowed) + " would be borne that way.";
        if (worst.forceN() > ratingN) {
            draft.mend(
                    allowed == null || allowed == 0
                            ? "Take out mass, steeper legs, or eyes of at least " + Amounts.number(worst.forceN(), 0)
                                    + " N."
                            : "Bring the centre of mass within " + Amounts.mm(allowed)
                                    + " of the middle of the eyes, or take steeper legs.");
        }
        return draft.atMost(
                worst.forceN() / 1000,
                ratingN / 1000,
                "kN",
                "The leg at " + worst.eye().name() + " pulls with " + Amounts.number(worst.forceN(), 0) + " N at "
                        + Amounts.number(worst.angle(), 1) + "° above the level, and bears at most "
                        + Amounts.percent(worst.share()) + " of " + Amounts.kg(plan.massKg()) + ", " + room);
    }

    /** Whether the centre of mass stays between the eyes, wherever in its range it is. */
    private static boolean between(LiftPlan plan) {
        Point low = plan.legs().get(0).eye().at();
        Point high = plan.legs().get(3).eye().at();
        return plan.lowX() >= Lengths.metres(low.x())
                && plan.highX() <= Lengths.metres(high.x())
                && plan.lowY() >= Lengths.metres(low.y())
                && plan.highY() <= Lengths.metres(high.y());
    }

    private static double use(Leg leg) {
        return leg.forceN() / rating(leg);
    }

    private static double rating(Leg leg) {
        Double rating = leg.eye().ratingN();
        return rating == null ? 1 : rating;
    }
}

package org.shelterwright.layouts.ledger.lifting;

import java.util.Optional;
import org.shelterwright.catalog.body.Provision;
import org.shelterwright.catalog.body.Provision.Use;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.scene.Scene;

/**
 * Each stand bears its part of the filled body: {@code m g s ≤ R}, with s the greater of its share among four and its share if it and the
 * one across bear all, as four stands on uneven ground do.
 */
final class StandLoad extends StoodLimit {
    StandLoad() {
        super(
                "lifting.stand",
                "Load on a stand",
                Source.commonPractice("Stands by statics, and two across carry all"),
                Use.STAND,
                "The body has no pads for stands.");
    }

    @Override
    Row row(RowDraft draft, Scene scene, LiftedMass lifted) {
        Optional<FourProvisions> found = FourProvisions.pads(scene.body());
        if (found.isEmpty()) {
            return draft.mend(
                            "Give four pads for stands in body " + scene.body().id() + ".")
                    .notAssessed("The pads for stands are not four at the corners of a level rectangle.");
        }
        FourProvisions pads = found.get();
        double weightN = lifted.massKg() * LiftedMass.STANDARD_GRAVITY;
        Provision worst = pads.all().get(0);
        double worstShare = 0;
        double worstRatingN = 1;
        double worstUse = -1;
        for (int i = 0; i < 4; i++) {
            Provision pad = pads.all().get(i);
            Double ratingN = pad.ratingN();
            if (ratingN == null) {
                return draft.mend("State its rating in body " + scene.body().id() + ".")
                        .notAssessed("The rating of " + pad.name() + " is not stated.");
            }
            double share = share(pads.points(), i, lifted);
            double use = share * weightN / ratingN;
            if (use > worstUse) {
                worstUse = use;
                worst = pad;
                worstShare = share;
                worstRatingN = ratingN;
            }
        }
        if (worstShare * weightN > worstRatingN) {
            draft.mend("Take stands rated for at least " + Amounts.number(worstShare * weightN, 0)
                    + " N, or fill the body on its carrier.");
        }
        return draft.atMost(
                worstShare * weightN / 1000,
                worstRatingN / 1000,
                "kN",
                "Off its carrier the stand at " + worst.name() + " bears up to " + Amounts.percent(worstShare) + " of "
                        + Amounts.kg(lifted.massKg()) + ".");
    }

    private static double share(FourPoints points, int pad, LiftedMass lifted) {
        double worst = 0;
        for (double x : lifted.x()) {
            for (double y : lifted.y()) {
                worst = Math.max(worst, Math.max(points.shares(x, y)[pad], points.sharesOfTwo(x, y)[pad]));
            }
        }
        return worst;
    }
}

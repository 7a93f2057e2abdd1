package org.shelterwright.layouts.ledger.lifting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
import org.shelterwright.catalog.body.Provision;
import org.shelterwright.catalog.body.Provision.Use;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;

/**
 * Each fork pocket bears its share of the filled body: {@code φ m g |x_other − x| / (x₂ − x₁) ≤ R}, with the centre of mass at the worse
 * end of its range. Two pockets that open to one side make a pair; the forks reach under the whole width. What the truck itself must
 * lift, and how far from the mouth, stands in the row; whether it can is a matter of its own plate.
 */
final class ForkPockets extends StoodLimit {
    ForkPockets() {
        super(
                "lifting.fork-pocket",
                "Load on a fork pocket",
                Source.commonPractice("Two forks share by the lever rule"),
                Use.FORK_POCKET,
                "The body has no fork pockets.");
    }

    private record Side(Provision rear, Provision front) {
        double x(boolean first) {
            return Lengths.metres((first ? rear : front).at().x());
        }

        /** Greater share of a pocket over the range of the centre; above 1 if the centre lies beyond a fork. */
        double share(boolean first, LiftedMass lifted) {
            double far = x(!first);
            double worst = Math.max(Math.abs(far - lifted.x()[0]), Math.abs(far - lifted.x()[1]));
            return worst / (x(false) - x(true));
        }
    }

    @Override
    Row row(RowDraft draft, Scene scene, LiftedMass lifted) {
        List<Side> sides = new ArrayList<>();
        TreeMap<Integer, List<Provision>> byMouth = new TreeMap<>();
        scene.body().provisions().stream()
                .filter(one -> one.use() == Use.FORK_POCKET)
                .sorted(Comparator.comparingInt(one -> one.at().x()))
                .forEach(one -> byMouth.computeIfAbsent(one.at().y(), y -> new ArrayList<>())
                        .add(one));
        for (List<Provision> mouths : byMouth.values()) {
            if (mouths.size() != 2
                    || mouths.get(0).at().x() == mouths.get(1).at().x()) {
                return draft.mend("State two fork pockets for each side from which forks go in.")
                        .notAssessed(Wording.count(mouths.size(), "fork pocket") + " at y "
                                + Amounts.mm(Lengths.metres(mouths.get(0).at().y()))
                                + ": two, side by side, share a load.");
            }
            sides.add(new Side(mouths.get(0), mouths.get(1)));
        }
        double weightN =
                lifted.massKg() * LiftedMass.STANDARD_GRAVITY * scene.rules().valueOr(Figure.LIFT_DYNAMIC_FACTOR, 1);
        Row worst = null;
        for (Side side : sides) {
            for (boolean first : new boolean[] {true, false}) {
                Provision pocket = first ? side.rear() : side.front();
                Double ratingN = pocket.ratingN();
                if (ratingN == null) {
                    return draft.mend("State its rating in body " + scene.body().id() + ".")
                            .notAssessed("The rating of " + pocket.name() + " is not stated.");
                }
                double share = side.share(first, lifted);
                Row row = row(draft, pocket, share, weightN, ratingN, lifted);
                if (worst == null || use(row) > use(worst)) {
                    worst = row;
                }
            }
        }
        if (worst == null) {
            throw new IllegalStateException("A body with fork pockets has none.");
        }
        return worst;
    }

    private static double use(Row row) {
        Double use = row.use();
        return use == null ? 0 : use;
    }

    private static Row row(
            RowDraft draft, Provision pocket, double share, double weightN, double ratingN, LiftedMass lifted) {
        double mouth = Lengths.metres(pocket.at().y());
        double reach = Math.max(Math.abs(mouth - lifted.y()[0]), Math.abs(mouth - lifted.y()[1]));
        double forceN = share * weightN;
        if (share > 1) {
            draft.mend("Bring the centre of mass between the forks, or lift the body by its eyes.");
        } else {
            draft.mend(forceN > ratingN ? "Take out mass, or lift the body by its eyes." : null);
        }
        // A centre beyond a fork turns the body off the forks, however strong the pockets are.
        double capacityN = share > 1 ? Math.min(ratingN, weightN) : ratingN;
        return draft.atMost(
                forceN / 1000,
                capacityN / 1000,
                "kN",
                "On forks " + pocket.name() + " bears up to " + Amounts.percent(share) + " of "
                        + Amounts.kg(lifted.massKg()) + "; the truck must be rated for that mass at "
                        + Amounts.mm(reach) + " from the mouth of the pockets.");
    }
}

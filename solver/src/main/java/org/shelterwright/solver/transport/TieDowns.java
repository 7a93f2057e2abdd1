package org.shelterwright.solver.transport;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.shelterwright.catalog.body.Provision;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.transit.LashingKind;
import org.shelterwright.layouts.transport.Lashing;
import org.shelterwright.layouts.transport.Load;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/** Tie-downs over a row of crates: as few straps as hold it, from right to left between anchor points that face each other. */
final class TieDowns {
    private static final int MOST = 8;
    private static final int INSET = 60_000;

    private final HoldPlan plan;
    private final List<PlacedPiece> row;
    private final char letter;
    private final Box hull;

    TieDowns(HoldPlan plan, List<PlacedPiece> row, char letter) {
        this.plan = plan;
        this.row = row;
        this.letter = letter;
        this.hull = row.stream().map(PlacedPiece::box).reduce(Box::hull).orElseThrow();
    }

    private record Pair(Provision right, Provision left) {}

    Load proposed() {
        Load best = plan.load();
        double bestUse = Double.MAX_VALUE;
        List<LashingKind> kinds = plan.legs().get(0).journey().parts().transit().lashings().stream()
                .filter(kind -> kind.tensionN() != null)
                .sorted(Comparator.comparingDouble(LashingKind::capacityN).reversed())
                .toList();
        for (LashingKind kind : kinds) {
            Load tried = plan.load();
            for (int count = 1; count <= MOST; count++) {
                Load more = strapped(tried, kind, count);
                if (more.equals(tried)) {
                    break;
                }
                tried = more;
                double use = plan.use(tried, row.get(0).id());
                if (plan.enough(use)) {
                    return tried;
                }
                if (use < bestUse) {
                    best = tried;
                    bestUse = use;
                }
            }
        }
        return best;
    }

    private Load strapped(Load load, LashingKind kind, int number) {
        List<String> what = row.stream().map(PlacedPiece::id).toList();
        for (Pair pair : pairs(load)) {
            int x = Math.max(
                    hull.x0() + INSET,
                    Math.min(hull.x1() - INSET, pair.right().at().x()));
            Lashing lashing = new Lashing(
                    letter + Integer.toString(number),
                    kind.id(),
                    what,
                    null,
                    pair.right().name(),
                    pair.left().name(),
                    x);
            Load with = HoldPlan.with(load, lashing);
            if (plan.fits(with, lashing)) {
                return with;
            }
        }
        return load;
    }

    /** Free pairs of anchor points of like x on both sides, those nearest the middle of the row first. */
    private List<Pair> pairs(Load load) {
        List<Pair> pairs = new ArrayList<>();
        var car = plan.placed(load).car();
        int middle = car.deck().width() / 2;
        for (Provision right : car.anchors()) {
            for (Provision left : car.anchors()) {
                if (right.at().y() < middle
                        && left.at().y() > middle
                        && left.at().x() == right.at().x()
                        && !HoldPlan.uses(load, right.name())
                        && !HoldPlan.uses(load, left.name())) {
                    pairs.add(new Pair(right, left));
                }
            }
        }
        double centre = (hull.x0() + (double) hull.x1()) / 2;
        pairs.sort(Comparator.comparingDouble(
                        (Pair pair) -> Math.abs(pair.right().at().x() - centre))
                .thenComparing(pair -> pair.right().name()));
        return pairs;
    }
}

package org.shelterwright.solver.transport;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.shelterwright.catalog.body.Provision;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.catalog.transit.LashingKind;
import org.shelterwright.layouts.transport.Lashing;
import org.shelterwright.layouts.transport.Load;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/**
 * Direct lashings of a vehicle or body in fours: from an eye near each corner outward to an anchor point of its side, as near to the
 * wanted angle as there is. The weakest chain that holds with four is taken, else more fours of the strongest.
 */
final class DirectLashings {
    private static final double WANTED_ANGLE = 35;
    private static final int MOST_FOURS = 3;

    private final HoldPlan plan;
    private final PlacedPiece piece;
    private final char letter;
    private final List<LashingKind> kinds;

    DirectLashings(HoldPlan plan, PlacedPiece piece, char letter) {
        this.plan = plan;
        this.piece = piece;
        this.letter = letter;
        this.kinds = plan.legs().get(0).journey().parts().transit().lashings().stream()
                .filter(kind ->
                        kind.make() == LashingKind.Make.CHAIN && kind.tensioner() == LashingKind.Tensioner.TURNBUCKLE)
                .sorted(Comparator.comparingDouble(LashingKind::capacityN))
                .toList();
    }

    Load proposed() {
        Load best = plan.load();
        double bestUse = Double.MAX_VALUE;
        for (int fours = 1; fours <= MOST_FOURS; fours++) {
            for (LashingKind kind : kinds) {
                Load tried = plan.load();
                for (int i = 0; i < fours; i++) {
                    tried = four(tried, kind, i);
                }
                double use = plan.use(tried, piece.id());
                if (plan.enough(use)) {
                    return tried;
                }
                if (use < bestUse
                        && tried.lashings().size() > plan.load().lashings().size()) {
                    best = tried;
                    bestUse = use;
                }
            }
        }
        return best;
    }

    private Load four(Load before, LashingKind kind, int round) {
        Load load = before;
        for (boolean front : new boolean[] {false, true}) {
            for (boolean left : new boolean[] {false, true}) {
                load = one(load, kind, front, left, round);
            }
        }
        return load;
    }

    private Load one(Load load, LashingKind kind, boolean front, boolean left, int round) {
        String key = letter
                + Integer.toString(1
                        + (int) load.lashings().stream()
                                .filter(lashing -> lashing.key().charAt(0) == letter)
                                .count());
        List<Provision> eyes = eyes(front, left);
        for (int i = 0; i < eyes.size(); i++) {
            Provision eye = eyes.get((i + round) % eyes.size());
            for (Provision anchor : anchors(load, eye.at(), front, left)) {
                Lashing lashing = Lashing.direct(key, kind.id(), piece.id(), eye.name(), anchor.name());
                Load with = HoldPlan.with(load, lashing);
                if (plan.fits(with, lashing)) {
                    return with;
                }
            }
        }
        return load;
    }

    /** The eyes of a corner, outermost and lowest first; those of the carrier before those of its body. */
    private List<Provision> eyes(boolean front, boolean left) {
        Rect foot = piece.foot();
        double middleX = (foot.x0() + (double) foot.x1()) / 2;
        double middleY = (foot.y0() + (double) foot.y1()) / 2;
        List<Provision> eyes = new ArrayList<>();
        for (Provision eye : piece.eyes()) {
            boolean corner = (eye.at().x() > middleX) == front && (eye.at().y() > middleY) == left;
            if (corner && eye.use() != Provision.Use.LIFTING && eye.ratingN() != null) {
                eyes.add(eye);
            }
        }
        eyes.sort(Comparator.comparing((Provision eye) -> eye.name().startsWith("body "))
                .thenComparingInt(eye -> eye.at().z())
                .thenComparing(eye -> front ? -eye.at().x() : eye.at().x())
                .thenComparing(Provision::name));
        return eyes;
    }

    /** The free anchor points outward of an eye on its side, nearest the wanted angle first. */
    private List<Provision> anchors(Load load, Point eye, boolean front, boolean left) {
        int middle = plan.placed(load).car().deck().width() / 2;
        List<Provision> anchors = new ArrayList<>();
        for (Provision anchor : plan.placed(load).car().anchors()) {
            boolean beyond = left ? anchor.at().y() >= eye.y() : anchor.at().y() <= eye.y();
            boolean side = (anchor.at().y() > middle) == left && beyond;
            boolean outward = front ? anchor.at().x() > eye.x() : anchor.at().x() < eye.x();
            if (side && outward && !HoldPlan.uses(load, anchor.name())) {
                anchors.add(anchor);
            }
        }
        anchors.sort(Comparator.comparingDouble((Provision anchor) -> Math.abs(angle(eye, anchor.at()) - WANTED_ANGLE))
                .thenComparing(Provision::name));
        return anchors;
    }

    private static double angle(Point eye, Point anchor) {
        double along = Math.hypot(eye.x() - (double) anchor.x(), eye.y() - (double) anchor.y());
        return Math.toDegrees(Math.atan2(eye.z() - (double) anchor.z(), along));
    }
}

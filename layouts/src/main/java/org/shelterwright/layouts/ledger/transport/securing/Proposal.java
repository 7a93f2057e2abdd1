package org.shelterwright.layouts.ledger.transport.securing;

import java.util.Optional;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.transport.Lashing;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/** Judges blocks and lashings of a load before they are taken over, by the same calculations as the limits. */
public final class Proposal {
    private static final double LEAST_SINE = 0.01;

    private Proposal() {}

    /** Greatest use of what holds a piece on a leg, against sliding and tipping and of its parts; infinite if it cannot be told. */
    public static double use(LegScene leg, PlacedLoad load, String piece) {
        Optional<Bundle> bundle = Bundle.of(leg, load).stream()
                .filter(one -> one.ids().subList(0, one.pieces().size()).contains(piece))
                .findFirst();
        if (bundle.isEmpty()) {
            return Double.POSITIVE_INFINITY;
        }
        double use = use(leg, bundle.get());
        for (Bundle tier : bundle.get().tiers()) {
            use = Math.max(use, use(leg, tier));
        }
        return use;
    }

    private static double use(LegScene leg, Bundle bundle) {
        Holds holds = Holds.of(leg, bundle);
        if (holds.missing() != null) {
            return Double.POSITIVE_INFINITY;
        }
        double use = holds.worst().map(Hold::use).orElse(0.0);
        for (Hold hold : holds.holds()) {
            if (hold.push().toward() != Face.TOP) {
                use = Math.max(use, Tips.balance(bundle, hold.push()).use());
            }
        }
        return use;
    }

    /** Whether a lashing has the right length and angle, runs free, crosses none of the load, and its tensioner can be reached. */
    public static boolean fits(LegScene leg, PlacedLoad load, Lashing lashing) {
        Rope rope = Rope.of(leg, load, lashing).orElse(null);
        if (rope == null
                || rope.bearsN() == null
                || rope.length() < rope.kind().shortest()
                || rope.length() > rope.kind().longest()
                || rope.sine() < LEAST_SINE) {
            return false;
        }
        double least = leg.rules().valueOr(rope.direct() ? Figure.LASHING_LEAST_ANGLE : Figure.TIE_DOWN_LEAST_ANGLE, 0);
        double most = rope.direct() ? leg.rules().valueOr(Figure.LASHING_MOST_ANGLE, 90) : 90;
        if (rope.angle() < least || rope.angle() > most || touches(load, rope)) {
            return false;
        }
        double space = leg.rules().valueOr(Figure.TENSIONER_SPACE, 0);
        return TensionerReach.free(load, rope.foot(), space) >= space
                && Rope.of(leg, load).stream()
                        .noneMatch(other -> other.direct()
                                && rope.direct()
                                && !other.lashing().equals(lashing)
                                && Crossing.cross(rope.top(), rope.foot(), other.top(), other.foot()));
    }

    private static boolean touches(PlacedLoad load, Rope rope) {
        if (!rope.direct()) {
            return false;
        }
        for (PlacedPiece piece : load.pieces()) {
            double from = LashingFits.from(rope, piece);
            for (Box solid : piece.solids()) {
                if (LashingFits.meets(rope.top(), rope.foot(), from, solid)) {
                    return true;
                }
            }
        }
        return false;
    }
}

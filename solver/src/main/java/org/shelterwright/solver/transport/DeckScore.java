package org.shelterwright.solver.transport;

import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.layouts.ledger.transport.place.OutlineFit;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.transport.Mode;
import org.shelterwright.layouts.transport.scene.CarStatics;
import org.shelterwright.layouts.transport.scene.CarStatics.GroupLoad;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/** How good positions on a deck are, less is better: axles within rating, outline kept, both ends alike, spread out. */
final class DeckScore {
    /** The cost of a fouled outline or of an axle over its rating by all of it. */
    static final double FOUL = 1000;

    /** What a clearance of nothing costs against balance; one of {@link #WIDE} costs nothing (µm). */
    private static final double NARROW = 3;

    private static final double WIDE = 100_000;

    private final List<LegScene> legs;
    private final TransitCar car;

    DeckScore(List<LegScene> legs, TransitCar car) {
        this.legs = legs;
        this.car = car;
    }

    double of(List<PlacedPiece> pieces) {
        return balance(pieces) + outline(pieces);
    }

    private double balance(List<PlacedPiece> pieces) {
        Optional<CarStatics> statics = CarStatics.of(car, pieces);
        if (statics.isEmpty()) {
            return off(pieces);
        }
        double over = 0;
        double use = 0;
        for (GroupLoad group : statics.get().groups()) {
            Double rating = group.group().axleRatingKg();
            if (rating != null) {
                over += group.axleKg() > 0.98 * rating ? group.axleKg() / rating : 0;
                use = Math.max(use, group.axleKg() / rating);
            }
        }
        boolean lorry = !car.kind().wagon();
        double ratio = Math.min(100, statics.get().ratio());
        return FOUL * over + (lorry ? use : ratio - 1);
    }

    /** Distance of the centre of mass from mid-length, of the length. */
    private double off(List<PlacedPiece> pieces) {
        double kg = 0;
        double moment = 0;
        for (PlacedPiece piece : pieces) {
            Box box = piece.box();
            kg += piece.shape().mostKg();
            moment += piece.shape().mostKg() * (box.x0() + (box.x1() - box.x0()) / 2.0);
        }
        return kg == 0 ? 0 : Math.abs(moment / kg / car.deck().length() - 0.5);
    }

    private double outline(List<PlacedPiece> pieces) {
        Integer low = car.deck().lowest();
        Integer high = car.deck().highest();
        double cost = 0;
        for (LegScene leg : legs) {
            if (low == null
                    || high == null
                    || leg.leg().mode() == Mode.SEA
                    || leg.leg().mode() == Mode.AIR) {
                continue;
            }
            double margin = 1000 * leg.rules().valueOr(Figure.OUTLINE_MARGIN, 0);
            for (PlacedPiece piece : pieces) {
                int clearance = OutlineFit.of(leg, car, piece, low, high)
                        .map(OutlineFit::clearance)
                        .orElse(Integer.MAX_VALUE);
                cost += clearance < margin ? FOUL * (1 + (margin - clearance) / 1e6) : 0;
                cost += NARROW * Math.max(0, 1 - clearance / WIDE);
            }
        }
        return cost;
    }
}

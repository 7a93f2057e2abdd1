package org.shelterwright.layouts.ledger.transport.burden;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.ledger.transport.LegLimit;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.rules.Rule;
import org.shelterwright.layouts.transport.scene.LegScene;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/**
 * No half of a container's length bears more than a share of the load, wherever that half lies; each piece is spread over its length.
 * Asked of loads above half of the payload (common practice): a light load strains no floor.
 * Source: CTU Code, annex 7, 3.1: never more than 60 % of the load on less than half the length (seen).
 */
final class HalfLength extends LegLimit {
    /** Share of the payload from which a load is asked. */
    private static final double HEAVY = 0.5;

    HalfLength() {
        super(
                "half-length",
                "Share on half the length",
                Source.seen("CTU Code, annex 7", "3.1: not more than 60 % of the load on less than half the length"),
                "No container with more than half of its payload goes on this leg.");
    }

    @Override
    public void assess(LegScene leg, Rows rows) {
        Rule rule = leg.rules().rule(Figure.HALF_LENGTH_SHARE).orElse(null);
        for (PlacedLoad load : leg.loads()) {
            if (load.car().kind() != TransitCar.Kind.CONTAINER || light(load)) {
                continue;
            }
            RowDraft draft = draft(leg, rows, title() + ", " + load.name()).units(load.ids());
            if (rule == null) {
                rows.add(unset(draft, Figure.HALF_LENGTH_SHARE));
                continue;
            }
            draft.source(rule.source());
            String unknown = load.unknown().orElse(null);
            if (unknown != null) {
                rows.add(draft.notAssessed(unknown));
                continue;
            }
            double share = worstKg(load) / load.massKg();
            rows.add(draft.mend(
                            share > rule.value()
                                    ? "Spread the load along the container, or set it on bedding beams."
                                    : null)
                    .atMost(
                            share,
                            rule.value(),
                            "share",
                            "The heaviest half of " + load.name() + " bears " + Amounts.percent(share)
                                    + " of the load."));
        }
    }

    private static boolean light(PlacedLoad load) {
        Double payload = load.car().ratedLoadKg();
        return load.massKg() <= 0 || payload != null && load.massKg() < HEAVY * payload;
    }

    /** The load per length is constant between the ends of pieces, so the worst window begins or ends at one of them. */
    private static double worstKg(PlacedLoad load) {
        double half = load.car().deck().length() / 2.0;
        List<Double> starts = new ArrayList<>();
        for (PlacedPiece piece : load.pieces()) {
            Rect foot = piece.foot();
            starts.addAll(List.of((double) foot.x0(), foot.x1() - half, foot.x0() - half, (double) foot.x1()));
        }
        double worst = 0;
        for (double start : starts) {
            double kg = 0;
            for (PlacedPiece piece : load.pieces()) {
                Rect foot = piece.foot();
                double inside = Math.min(foot.x1(), start + half) - Math.max(foot.x0(), start);
                Double massKg = piece.shape().massKg();
                kg += massKg == null ? 0 : massKg * Math.max(0, inside) / (foot.x1() - foot.x0());
            }
            worst = Math.max(worst, kg);
        }
        return worst;
    }
}

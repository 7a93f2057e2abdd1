package org.shelterwright.layouts.ledger.racks;

import java.util.List;
import java.util.OptionalDouble;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.inside.InRack;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.mend.UnsetFigure;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * A piece that slides out has room to: its whole way before the rack, and a gap behind the person's side of it, is free of solids
 * of other units and inside the body, on station. The tightest governs.
 *
 * <p>Source: installation guides, full slide-out is the depth and 0.2 m (from memory).
 */
final class SlideRoom extends BayLimit {
    SlideRoom() {
        super(
                "racks.slide-out",
                "Room to slide out",
                Severity.MEDIUM,
                Source.fromMemory("Installation guides of racks", "full-depth slide-out and 0.2 m"));
    }

    @Override
    void assess(Scene scene, FilledBay bay, Rows rows) {
        OptionalDouble gap = scene.rules().value(Figure.RACK_SLIDE_GAP);
        List<InRack> sliding = bay.pieces().stream()
                .filter(piece -> piece.mount().slideTravel() != null)
                .toList();
        if (sliding.isEmpty()) {
            rows.add(draft(rows, bay).held("No piece in " + bay.name() + " slides out."));
            return;
        }
        if (gap.isEmpty()) {
            rows.add(UnsetFigure.row(rows, this, Figure.RACK_SLIDE_GAP));
            return;
        }
        int more = (int) Math.round(gap.getAsDouble() * Lengths.MM);
        InRack worst = sliding.get(0);
        int least = Integer.MAX_VALUE;
        for (InRack piece : sliding) {
            int margin = free(scene, bay, piece) - need(piece, more);
            if (margin < least) {
                least = margin;
                worst = piece;
            }
        }
        int there = free(scene, bay, worst);
        int need = need(worst, more);
        rows.add(draft(rows, bay, worst)
                .state(Wording.situation(Situation.ON_STATION))
                .mend("Turn or move " + bay.unit().name() + ", or what stands before it.")
                .atLeast(
                        need / (double) Lengths.MM,
                        there / (double) Lengths.MM,
                        "mm",
                        worst.name() + " needs " + Wording.mm(need) + " before its panel to slide out of " + bay.name()
                                + "; " + Wording.mm(there) + " are free."));
    }

    private static int need(InRack piece, int gap) {
        Integer travel = piece.mount().slideTravel();
        return (travel == null ? 0 : travel) + gap;
    }

    /** Free way before a piece (µm): to the nearest solid of another unit, or to the wall. */
    private static int free(Scene scene, FilledBay bay, InRack piece) {
        Box box = bay.placed(piece.box());
        Face way = bay.unit().pose(Situation.ON_STATION).apply(bay.bay().front());
        Axis axis = way.axis();
        Box inside = scene.body().inside().box();
        int edge = way.sign() > 0 ? box.high(axis) : box.low(axis);
        int free = way.sign() > 0 ? inside.high(axis) - edge : edge - inside.low(axis);
        Box sweep = box.swept(axis, way.sign() * Math.max(0, free));
        for (PlacedUnit other : scene.units()) {
            if (other != bay.unit()) {
                for (Box solid : other.solids(Situation.ON_STATION)) {
                    if (solid.overlaps(sweep)) {
                        int to = way.sign() > 0 ? solid.low(axis) - edge : edge - solid.high(axis);
                        free = Math.min(free, Math.max(0, to));
                    }
                }
            }
        }
        return Math.max(0, free);
    }
}

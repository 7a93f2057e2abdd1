package org.shelterwright.layouts.ledger.stowage;

import java.util.OptionalDouble;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.inside.InPlace;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.mend.UnsetFigure;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;

/**
 * A hand can take each piece: at two opposite sides that are not the way out, there is room for fingers to the next piece or wall;
 * or the piece has a handle of its own. The tightest piece governs.
 *
 * <p>Source: common practice, 25 mm for fingers, editable.
 */
final class GripRoom extends PlaceLimit {
    GripRoom() {
        super(
                "stowage.grip",
                "Room to grip",
                Severity.MEDIUM,
                Source.commonPractice("Room for fingers at two sides of what is taken out by hand"));
    }

    @Override
    void assess(Scene scene, FilledPlace place, Rows rows) {
        OptionalDouble common = scene.rules().value(Figure.STOWAGE_GRIP);
        if (common.isEmpty()) {
            rows.add(UnsetFigure.row(rows, this, Figure.STOWAGE_GRIP));
            return;
        }
        InPlace worst = null;
        int least = Integer.MAX_VALUE;
        for (InPlace piece : place.pieces()) {
            int need = need(piece, common.getAsDouble());
            if (need > 0) {
                int margin = room(piece, place) - need;
                if (margin < least) {
                    least = margin;
                    worst = piece;
                }
            }
        }
        if (worst == null) {
            rows.add(draft(rows, place).held("Every piece in the " + place.name() + " has a handle of its own."));
            return;
        }
        int need = need(worst, common.getAsDouble());
        int there = room(worst, place);
        rows.add(draft(rows, place, worst)
                .mend("Move what lies beside it, or put it into another place.")
                .atLeast(
                        need / (double) Lengths.MM,
                        there / (double) Lengths.MM,
                        "mm",
                        worst.name() + " in the " + place.name() + " leaves " + Wording.mm(there)
                                + " for fingers at its sides; it needs " + Wording.mm(need) + "."));
    }

    private static int need(InPlace piece, double commonMm) {
        Integer own = piece.loose().grip();
        return own == null ? (int) Math.round(commonMm * Lengths.MM) : own;
    }

    /** The room at both sides of a piece along the axis that has most (µm). */
    static int room(InPlace piece, FilledPlace place) {
        Axis out = place.stowage().way().axis();
        int most = 0;
        for (Axis axis : Axis.values()) {
            if (axis != out && axis != Axis.Z) {
                most = Math.max(most, room(piece, place, axis));
            }
        }
        return most;
    }

    private static int room(InPlace piece, FilledPlace place, Axis axis) {
        Box box = piece.box();
        Box inside = place.stowage().inside();
        int low = box.low(axis) - inside.low(axis);
        int high = inside.high(axis) - box.high(axis);
        for (InPlace other : place.pieces()) {
            Box beside = other.box();
            if (other != piece && faces(box, beside, axis)) {
                if (beside.high(axis) <= box.low(axis)) {
                    low = Math.min(low, box.low(axis) - beside.high(axis));
                } else if (beside.low(axis) >= box.high(axis)) {
                    high = Math.min(high, beside.low(axis) - box.high(axis));
                }
            }
        }
        return Math.max(0, Math.min(low, high));
    }

    private static boolean faces(Box a, Box b, Axis axis) {
        for (Axis other : Axis.values()) {
            if (other != axis && (a.high(other) <= b.low(other) || b.high(other) <= a.low(other))) {
                return false;
            }
        }
        return true;
    }
}

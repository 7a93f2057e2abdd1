package org.shelterwright.app.desk.inside;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.elevation.BayFront;
import org.shelterwright.app.type.Typeface;
import org.shelterwright.catalog.piece.Piece;
import org.shelterwright.catalog.rack.RackBay;
import org.shelterwright.layouts.edit.Edit;
import org.shelterwright.layouts.edit.PutPiece;
import org.shelterwright.layouts.edit.SwapPieces;
import org.shelterwright.layouts.inside.Held;
import org.shelterwright.layouts.inside.InRack;
import org.shelterwright.layouts.layout.PiecePlace;

/** A bay from its front. A piece that is dragged goes from height unit to height unit, and swaps with one as high as itself. */
final class RackDrawing implements InsideDrawing {
    private static final double MARGIN = 7;

    private final InsideDesk desk;
    private final RackBay bay;
    private final BayFront front;

    /** @param paper the pane; the front is as large as it allows, and in its middle */
    RackDrawing(InsideDesk desk, RackBay bay, Bounds paper, Typeface typeface) {
        this.desk = desk;
        this.bay = bay;
        double scale = (paper.height() - 2 * MARGIN) / (bay.height() / 1000.0);
        front = new BayFront(typeface, bay, new Spot(paper.centre().x(), paper.y1() - MARGIN), scale);
    }

    @Override
    public List<Shape> shapes() {
        return front.shapes(desk.racked());
    }

    @Override
    public List<Bounds> bounds(Held held) {
        return held instanceof InRack in ? List.of(front.bounds(in)) : List.of();
    }

    @Override
    public Optional<Held> pieceAt(Spot spot) {
        List<InRack> pieces = desk.racked();
        for (int i = pieces.size() - 1; i >= 0; i--) {
            if (front.bounds(pieces.get(i)).contains(spot)) {
                return Optional.of(pieces.get(i));
            }
        }
        return Optional.empty();
    }

    @Override
    public Optional<Edit> dragged(String piece, @Nullable Spot from, Spot to) {
        Piece kind = desk.kind(piece).orElse(null);
        if (kind == null || kind.rack() == null || !front.bounds().grown(MARGIN).contains(to)) {
            return Optional.empty();
        }
        int high = kind.rack().units();
        InRack before = atRest().stream()
                .filter(one -> one.id().equals(piece))
                .findFirst()
                .orElse(null);
        InRack other = before == null || from == null ? null : swappable(before, to);
        if (other != null) {
            return Optional.of(new SwapPieces(piece, other.id()));
        }
        int taken = before == null || from == null ? (high - 1) / 2 : front.unitAt(from.y()) - before.lowest();
        int lowest = Math.max(1, Math.min(bay.units() - high + 1, front.unitAt(to.y()) - taken));
        Inside open = desk.opened().get();
        if (open == null || high > bay.units()) {
            return Optional.empty();
        }
        PiecePlace place = PiecePlace.inRack(piece, open.unit(), open.place(), lowest)
                .withKept(before != null && before.place().kept());
        return Optional.of(new PutPiece(place));
    }

    private List<InRack> atRest() {
        return desk.heldAtRest().stream()
                .filter(InRack.class::isInstance)
                .map(InRack.class::cast)
                .toList();
    }

    /** A piece of the same height under the pointer. */
    private @Nullable InRack swappable(InRack dragged, Spot to) {
        return atRest().stream()
                .filter(one -> !one.id().equals(dragged.id())
                        && one.mount().units() == dragged.mount().units()
                        && front.bounds(one).contains(to))
                .findFirst()
                .orElse(null);
    }
}

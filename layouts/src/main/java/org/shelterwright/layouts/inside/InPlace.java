package org.shelterwright.layouts.inside;

import org.shelterwright.catalog.item.Stowage;
import org.shelterwright.catalog.piece.Loose;
import org.shelterwright.catalog.piece.Piece;
import org.shelterwright.catalog.piece.Urgency;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.brief.PieceSpec;
import org.shelterwright.layouts.layout.PiecePlace;
import org.shelterwright.layouts.layout.Posture;

/**
 * A loose piece in a stowage place.
 *
 * @param at its low corner in the frame of the item
 */
public record InPlace(
        PieceSpec spec, Piece piece, Loose loose, PiecePlace place, Stowage stowage, Point at, Posture posture)
        implements Held {
    @Override
    public Box box() {
        return Box.of(at, posture.apply(piece.size()));
    }

    @Override
    public Point centre() {
        Point own = piece.mass().centre();
        return own == null ? box().centre() : at.plus(posture.apply(own));
    }

    /** How fast it must be at hand: as the brief says, or else its kind. */
    public Urgency urgency() {
        Urgency asked = spec.urgency();
        return asked == null ? loose.urgency() : asked;
    }
}

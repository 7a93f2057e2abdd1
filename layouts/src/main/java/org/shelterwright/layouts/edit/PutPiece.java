package org.shelterwright.layouts.edit;

import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.PiecePlace;

/**
 * Puts a piece into a unit; it leaves the place that it had.
 *
 * @param place where it is to ride
 */
public record PutPiece(PiecePlace place) implements Edit {
    @Override
    public String name() {
        return "Put " + place.piece() + " into " + place.unit();
    }

    @Override
    public Layout apply(Layout layout) {
        Pieces.requireFitting(layout, place);
        return layout.withContents(layout.contents().with(place));
    }
}

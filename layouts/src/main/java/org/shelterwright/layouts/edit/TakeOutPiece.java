package org.shelterwright.layouts.edit;

import org.shelterwright.layouts.layout.Layout;

/**
 * Takes a piece out of its unit; it is then still to be stowed.
 *
 * @param piece id of the piece
 */
public record TakeOutPiece(String piece) implements Edit {
    @Override
    public String name() {
        return "Take out " + piece;
    }

    @Override
    public Layout apply(Layout layout) {
        Pieces.placed(layout, piece);
        return layout.withContents(layout.contents().without(piece));
    }
}

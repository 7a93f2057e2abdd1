package org.shelterwright.layouts.edit;

import org.shelterwright.layouts.layout.Layout;

/**
 * Keeps a piece where it is when pieces are arranged anew, or lets it go.
 *
 * @param piece id of the piece
 * @param kept whether it stays
 */
public record LockPiece(String piece, boolean kept) implements Edit {
    @Override
    public String name() {
        return (kept ? "Keep " : "Let go ") + piece;
    }

    @Override
    public Layout apply(Layout layout) {
        return layout.withContents(
                layout.contents().with(Pieces.placed(layout, piece).withKept(kept)));
    }
}

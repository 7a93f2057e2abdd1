package org.shelterwright.layouts.edit;

import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.PiecePlace;

/**
 * Lets two pieces change places. Rack-mounted ones change their lowest height units, loose ones their low corners and postures.
 *
 * @param first id of a piece
 * @param second id of another
 */
public record SwapPieces(String first, String second) implements Edit {
    public SwapPieces {
        if (first.equals(second)) {
            throw new IllegalArgumentException("The piece \"" + first + "\" cannot change places with itself.");
        }
    }

    @Override
    public String name() {
        return "Swap " + first + " and " + second;
    }

    @Override
    public Layout apply(Layout layout) {
        PiecePlace one = Pieces.placed(layout, second).of(first);
        PiecePlace other = Pieces.placed(layout, first).of(second);
        Pieces.requireFitting(layout, one);
        Pieces.requireFitting(layout, other);
        return layout.withContents(layout.contents().with(one).with(other));
    }
}

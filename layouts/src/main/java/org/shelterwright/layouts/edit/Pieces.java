package org.shelterwright.layouts.edit;

import java.util.List;
import org.shelterwright.catalog.json.NearestName;
import org.shelterwright.layouts.brief.PieceSpec;
import org.shelterwright.layouts.brief.UnitSpec;
import org.shelterwright.layouts.inside.Interiors;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.PiecePlace;

/** The pieces of a layout, found. */
final class Pieces {
    private Pieces() {}

    static PieceSpec require(Layout layout, String piece) {
        List<PieceSpec> pieces = layout.brief().listed().pieces();
        return pieces.stream()
                .filter(one -> one.id().equals(piece))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("The brief has no piece \"" + piece + "\"."
                        + NearestName.hint(
                                piece, pieces.stream().map(PieceSpec::id).toList())));
    }

    static PiecePlace placed(Layout layout, String piece) {
        require(layout, piece);
        PiecePlace place = layout.contents().places().get(piece);
        if (place == null) {
            throw new IllegalArgumentException(
                    "The piece \"" + piece + "\" has no place yet. Put it into a unit first.");
        }
        return place;
    }

    /**
     * Holds a place against the unit that it names.
     *
     * @throws IllegalArgumentException if the unit has no such place for such a piece
     */
    static void requireFitting(Layout layout, PiecePlace place) {
        PieceSpec spec = require(layout, place.piece());
        UnitSpec unit = Units.require(layout, place.unit());
        if (Interiors.held(spec, layout.contents().kind(spec), place, layout.item(unit)) == null) {
            throw new IllegalArgumentException("The unit \"" + place.unit() + "\" has no "
                    + (place.racked()
                            ? "height units from U" + place.lowest() + " on in a bay \""
                            : "stowage place \"")
                    + place.place() + "\" for the piece \"" + place.piece() + "\". Choose another place.");
        }
    }
}

package org.shelterwright.layouts.inside;

import org.shelterwright.catalog.piece.Piece;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.brief.PieceSpec;
import org.shelterwright.layouts.layout.PiecePlace;

/** A piece at its place inside a unit; cuboids and points in the frame of the item. */
public interface Held {
    PieceSpec spec();

    Piece piece();

    PiecePlace place();

    /** What it fills. */
    Box box();

    /** Its centre of mass; of a piece that does not state it, the middle. */
    Point centre();

    default String id() {
        return spec().id();
    }

    default String name() {
        return spec().name();
    }
}

package org.shelterwright.app.journey;

import org.shelterwright.app.look.Tint;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/** The tint of each solid of a piece, in documents and in the window. */
public final class PieceTint {
    private PieceTint() {}

    /** Of the body of a vehicle, its cab and frame, a body by itself, a crate. */
    public static Tint of(PlacedPiece piece, int solid) {
        if (piece.shape().crate() != null) {
            return Tint.PLY;
        }
        if (!piece.shape().wheeled()) {
            return Tint.ENAMEL;
        }
        boolean last = solid == piece.solids().size() - 1;
        return last ? Tint.ENAMEL : solid == 0 ? Tint.PAINT : Tint.STEEL;
    }
}

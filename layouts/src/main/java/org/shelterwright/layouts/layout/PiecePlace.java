package org.shelterwright.layouts.layout;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.rack.RackStandard;
import org.shelterwright.catalog.space.Point;

/**
 * Where one piece rides: in a bay of a rack, or in a stowage place. On station it is there too, unless it is taken out to its
 * task.
 *
 * @param piece id of the piece
 * @param unit id of the unit
 * @param place name of the bay or of the stowage place of its item
 * @param lowest its lowest height unit in the bay, from 1; {@code null} if it is loose
 * @param at its low corner in the frame of the unit; {@code null} if it is rack-mounted
 * @param posture how it lies; {@code null} if it is rack-mounted
 * @param kept true if an arrangement must leave it there
 */
public record PiecePlace(
        String piece,
        String unit,
        String place,
        @Nullable Integer lowest,
        @Nullable Point at,
        @Nullable Posture posture,
        boolean kept) {
    public PiecePlace {
        if ((lowest == null) == (at == null) || (at == null) != (posture == null)) {
            throw new IllegalArgumentException("The place of piece \"" + piece
                    + "\" must give either its lowest height unit, or the corner and the posture in which it lies.");
        }
        if (lowest != null && (lowest < 1 || lowest > RackStandard.MOST_UNITS)) {
            throw new IllegalArgumentException("The lowest height unit " + lowest + " of piece \"" + piece
                    + "\" must be from 1 to " + RackStandard.MOST_UNITS + ".");
        }
    }

    public static PiecePlace inRack(String piece, String unit, String bay, int lowest) {
        return new PiecePlace(piece, unit, bay, lowest, null, null, false);
    }

    public static PiecePlace stowed(String piece, String unit, String place, Point at, Posture posture) {
        return new PiecePlace(piece, unit, place, null, at, posture, false);
    }

    public boolean racked() {
        return lowest != null;
    }

    public PiecePlace withKept(boolean other) {
        return new PiecePlace(piece, unit, place, lowest, at, posture, other);
    }

    /** The place of this one, for another piece. */
    public PiecePlace of(String other) {
        return new PiecePlace(other, unit, place, lowest, at, posture, kept);
    }
}

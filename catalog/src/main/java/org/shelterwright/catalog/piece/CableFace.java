package org.shelterwright.catalog.piece;

import org.shelterwright.catalog.item.CableClass;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Millimetres;

/**
 * A face of a rack-mounted piece at which cables leave.
 *
 * @param face front or rear
 * @param plug how far the plug stands out (µm)
 * @param bendRadius least radius to which its cables may be bent (µm)
 */
public record CableFace(Face face, CableClass cableClass, @Millimetres int plug, @Millimetres int bendRadius) {
    public CableFace {
        if (face != Face.FRONT && face != Face.REAR) {
            throw new IllegalArgumentException("Cables of a rack-mounted piece must leave at its front or rear.");
        }
        if (plug < 0 || bendRadius < 0) {
            throw new IllegalArgumentException("Plug and bend radius of a cable face must not be below zero.");
        }
    }

    /** Depth that it needs beyond the piece (µm). */
    public int depth() {
        return plug + bendRadius;
    }
}

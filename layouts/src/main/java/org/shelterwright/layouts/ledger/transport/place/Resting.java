package org.shelterwright.layouts.ledger.transport.place;

import java.util.LinkedHashMap;
import java.util.Map;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/** What pieces of a car rest on. */
final class Resting {
    private Resting() {}

    /** The pieces whose tops bear a piece, with the area of its underside on each (µm²); none of one on the deck. */
    static Map<PlacedPiece, Double> on(PlacedPiece piece, PlacedLoad load) {
        Map<PlacedPiece, Double> areas = new LinkedHashMap<>();
        Box box = piece.box();
        if (box.z0() == 0) {
            return areas;
        }
        for (PlacedPiece other : load.pieces()) {
            Box below = other.box();
            if (other != piece && below.z1() == box.z0()) {
                double along = Math.min(box.x1(), below.x1()) - (double) Math.max(box.x0(), below.x0());
                double across = Math.min(box.y1(), below.y1()) - (double) Math.max(box.y0(), below.y0());
                if (along > 0 && across > 0) {
                    areas.put(other, along * across);
                }
            }
        }
        return areas;
    }
}

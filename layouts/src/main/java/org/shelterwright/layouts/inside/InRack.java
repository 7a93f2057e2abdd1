package org.shelterwright.layouts.inside;

import org.shelterwright.catalog.piece.Piece;
import org.shelterwright.catalog.piece.RackMount;
import org.shelterwright.catalog.rack.RackBay;
import org.shelterwright.catalog.rack.RackStandard;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.brief.PieceSpec;
import org.shelterwright.layouts.layout.PiecePlace;

/**
 * A piece in a bay.
 *
 * @param lowest its lowest height unit, from 1
 */
public record InRack(PieceSpec spec, Piece piece, RackMount mount, PiecePlace place, RackBay bay, int lowest)
        implements Held {
    /** Its highest height unit. */
    public int highest() {
        return lowest + mount.units() - 1;
    }

    /** Its lower edge above the lower edge of unit 1 (µm). */
    public int low() {
        return RackStandard.height(lowest - 1);
    }

    /** Depth behind the mounting plane (µm). */
    public int rearDepth() {
        return piece.size().x() - mount.frontDepth();
    }

    @Override
    public Box box() {
        return bay.box(
                mount.frontDepth(),
                rearDepth(),
                piece.size().y(),
                low(),
                low() + piece.size().z());
    }

    @Override
    public Point centre() {
        Point own = piece.mass().centre();
        Point at = own == null ? piece.size().box().centre() : own;
        return bay.point(rearDepth() - at.x(), at.y() - piece.size().y() / 2, low() + at.z());
    }

    /** Height of its centre of mass above the lower edge of unit 1 (µm). */
    public int centreHeight() {
        return centre().z() - bay.at().z();
    }

    public boolean overlaps(InRack other) {
        return lowest <= other.highest() && other.lowest <= highest();
    }
}

package org.shelterwright.layouts.ledger.stowage;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.inside.InPlace;

/**
 * What a piece rests on: the bottom of its place, or the tops of others.
 *
 * @param share share of its base that rests
 * @param on the pieces that it rests on
 */
record Resting(double share, List<InPlace> on) {
    static Resting of(InPlace piece, FilledPlace place) {
        Box box = piece.box();
        if (box.z0() == place.stowage().inside().z0()) {
            return new Resting(1, List.of());
        }
        double base = (double) (box.x1() - box.x0()) * (box.y1() - box.y0());
        double held = 0;
        List<InPlace> on = new ArrayList<>();
        for (InPlace other : place.pieces()) {
            Box under = other.box();
            if (other != piece && under.z1() == box.z0()) {
                long x = Math.min(box.x1(), under.x1()) - Math.max(box.x0(), under.x0());
                long y = Math.min(box.y1(), under.y1()) - Math.max(box.y0(), under.y0());
                if (x > 0 && y > 0) {
                    held += (double) x * y;
                    on.add(other);
                }
            }
        }
        return new Resting(Math.min(1, held / base), on);
    }
}

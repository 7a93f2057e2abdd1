package org.shelterwright.solver.route;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.cable.WireEnd;

/**
 * A wire to route.
 *
 * @param owner number by which links may be its own; shared by the wires of a bus
 * @param barred places of trays where it is not to come in, since they left no room for a bend
 * @param shunned where cables run that it is to keep away from
 * @param far whether its ends may be joined outside trays over any distance, since trays did not join them
 */
record Ask(
        LaidWire laid,
        WireEnd from,
        WireEnd to,
        Cable cable,
        int owner,
        Set<Point> barred,
        List<Box> shunned,
        boolean far) {
    Ask {
        barred = Set.copyOf(barred);
        shunned = List.copyOf(shunned);
    }

    String id() {
        return laid.wire().id();
    }

    /** Least radius of its bends (µm). */
    int bendRadius() {
        Integer radius = cable.bendRadius();
        return radius == null ? cable.diameter() : radius;
    }

    /** The radius that is laid, an eighth wider than the least, so that nothing is laid on the edge (µm). */
    int radius() {
        return bendRadius() + (bendRadius() + 7) / 8;
    }

    int classBit() {
        return 1 << cable.cableClass().ordinal();
    }

    /** What it takes of a tray. */
    long size() {
        return (long) Math.ceil(TrayNodes.SIZE * cable.areaMm2());
    }

    Ask barring(Set<Point> places) {
        Set<Point> all = new HashSet<>(barred);
        all.addAll(places);
        return new Ask(laid, from, to, cable, owner, all, shunned, far);
    }

    Ask shunning(List<Box> others) {
        return new Ask(laid, from, to, cable, owner, barred, others, far);
    }

    Ask withFar() {
        return new Ask(laid, from, to, cable, owner, barred, shunned, true);
    }

    Ask with(Cable other) {
        return new Ask(laid, from, to, other, owner, barred, shunned, far);
    }
}

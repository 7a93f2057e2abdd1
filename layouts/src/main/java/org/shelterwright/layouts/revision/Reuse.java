package org.shelterwright.layouts.revision;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.shelterwright.catalog.cable.Cable;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.ledger.fit.PlacedFixing;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * What of the work on one revision is of use for the next.
 *
 * @param holes places of the body at which something was bolted
 * @param holesKept of these, those at which something still is
 * @param holesNew places at which something is now, and was not
 * @param cables wires that were cut
 * @param cablesKept of these, those whose cable is of the same type, long enough, and no more than a tenth or 300 mm too long
 * @param cablesUntouched of these, those that lie exactly as they did
 * @param cablesNew wires that there were not, or whose cable cannot be kept
 */
public record Reuse(
        int holes, int holesKept, int holesNew, int cables, int cablesKept, int cablesUntouched, int cablesNew) {
    private static final long SPARE = 300_000;
    private static final double SPARE_SHARE = 0.1;

    private record Hole(Point at, Face face) {}

    /** Compares two revisions. Wires that are not routed in a revision are not counted there. */
    public static Reuse of(Scene before, Scene after) {
        Set<Hole> old = holes(before);
        Set<Hole> now = holes(after);
        Set<Hole> kept = new LinkedHashSet<>(old);
        kept.retainAll(now);
        int cables = 0;
        int cablesKept = 0;
        int untouched = 0;
        List<String> usable = new ArrayList<>();
        for (LaidWire wire : CableNet.of(before).wires()) {
            if (wire.routed() && wire.cutLength() >= 0) {
                cables++;
                LaidWire next = CableNet.of(after).wire(wire.wire().id()).orElse(null);
                if (next != null && fits(wire, next)) {
                    cablesKept++;
                    usable.add(wire.wire().id());
                    untouched += WireShift.same(wire, next) ? 1 : 0;
                }
            }
        }
        int made = (int) CableNet.of(after).wires().stream()
                .filter(wire -> wire.routed() && !usable.contains(wire.wire().id()))
                .count();
        return new Reuse(old.size(), kept.size(), now.size() - kept.size(), cables, cablesKept, untouched, made);
    }

    /** Share of the holes that are kept; 1 if there were none. */
    public double holeShare() {
        return holes == 0 ? 1 : (double) holesKept / holes;
    }

    /** Share of the cables that are kept; 1 if there were none. */
    public double cableShare() {
        return cables == 0 ? 1 : (double) cablesKept / cables;
    }

    private static boolean fits(LaidWire old, LaidWire now) {
        Cable cable = old.cable();
        return now.routed()
                && cable != null
                && cable.equals(now.cable())
                && now.cutLength() <= old.cutLength()
                && old.cutLength() - now.cutLength() <= Math.max(SPARE, SPARE_SHARE * old.cutLength());
    }

    private static Set<Hole> holes(Scene scene) {
        Set<Hole> holes = new LinkedHashSet<>();
        for (PlacedUnit unit : scene.units()) {
            for (Situation situation : Situation.values()) {
                for (PlacedFixing fixing : PlacedFixing.of(unit, situation)) {
                    if (!fixing.intoHost()) {
                        holes.add(new Hole(fixing.at(), fixing.face()));
                    }
                }
            }
        }
        return holes;
    }
}

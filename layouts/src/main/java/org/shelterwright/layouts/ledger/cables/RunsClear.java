package org.shelterwright.layouts.ledger.cables;

import org.shelterwright.catalog.body.Intrusion;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.layout.Run;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.RowDraft;
import org.shelterwright.layouts.ledger.Rows;
import org.shelterwright.layouts.ledger.Severity;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * What is laid outside trays stays inside the body and passes through no solid, on station and on the road. Running on the face
 * of a solid, or on a wall behind a unit, is free. The measure is the least way out of the solid.
 *
 * <p>Source: geometry.
 */
final class RunsClear extends CableLimit {
    RunsClear() {
        super(
                "cables.clear",
                "Cables clear of solids",
                Severity.MEDIUM,
                Source.commonPractice("Two things cannot be in one place"));
    }

    @Override
    void assess(Scene scene, CableNet net, Rows rows) {
        boolean any = false;
        boolean clear = true;
        for (LaidWire wire : net.wires()) {
            if (wire.routed() && wire.shape() != null) {
                any = true;
                for (Run run : wire.shape().route().runs()) {
                    if (run.tray() == null) {
                        clear &= run(scene, wire, run, rows);
                    }
                }
            }
        }
        if (!any) {
            rows.add(rows.draft(this).notAssessed("No wire has a route that could be judged. Route the wires first."));
        } else if (clear) {
            rows.add(rows.draft(this).held("No cable passes through a unit or out of the body."));
        }
    }

    private boolean run(Scene scene, LaidWire wire, Run run, Rows rows) {
        boolean clear = true;
        Box hull = Box.between(run.first(), run.first());
        for (Point point : run.path()) {
            hull = hull.hull(Box.between(point, point));
        }
        if (!scene.body().inside().box().contains(hull)) {
            rows.add(row(rows, wire, hull)
                    .atMost(1, 0, "", wire.name() + " leaves the inside of the body other than by an entry panel."));
            return false;
        }
        for (Intrusion intrusion : scene.body().intrusions()) {
            clear &= solid(wire, run, hull, intrusion.box(), intrusion.name(), "always", rows);
        }
        for (PlacedUnit unit : scene.units()) {
            boolean moves = unit.differsOnTheRoad();
            for (Situation situation : Situation.values()) {
                if ((situation == Situation.ON_STATION || moves) && hull.touches(unit.outline(situation))) {
                    String state = moves ? Wording.situation(situation) : "always";
                    for (Box solid : unit.solids(situation)) {
                        clear &= solid(wire, run, hull, solid, unit.name(), state, rows);
                    }
                }
            }
        }
        return clear;
    }

    private boolean solid(LaidWire wire, Run run, Box hull, Box solid, String name, String state, Rows rows) {
        if (!hull.touches(solid)) {
            return true;
        }
        int depth = 0;
        for (int i = 1; i < run.path().size(); i++) {
            depth = Math.max(depth, depth(run.path().get(i - 1), run.path().get(i), solid));
        }
        if (depth == 0) {
            return true;
        }
        Row row = row(rows, wire, hull)
                .state(state)
                .atMost(
                        depth / (double) Lengths.MM,
                        0,
                        "mm",
                        wire.name() + " passes through " + name + ", " + Wording.mm(depth) + " from its face.");
        rows.add(row);
        return false;
    }

    private RowDraft row(Rows rows, LaidWire wire, Box place) {
        return rows.draft(this, title() + ", " + wire.wire().id())
                .units(wire.units())
                .place(place)
                .mend("Route it again, or move what stands in its way.");
    }

    /** How deep a straight along an axis lies within a solid, across its run (µm); zero if it passes outside or on its face. */
    static int depth(Point a, Point b, Box solid) {
        int least = Integer.MAX_VALUE;
        for (Axis axis : Axis.values()) {
            int low = Math.min(a.along(axis), b.along(axis));
            int high = Math.max(a.along(axis), b.along(axis));
            if (low < high) {
                if (low >= solid.high(axis) || high <= solid.low(axis)) {
                    return 0;
                }
            } else {
                least = Math.min(least, Math.min(low - solid.low(axis), solid.high(axis) - low));
            }
        }
        return least == Integer.MAX_VALUE ? 0 : Math.max(0, least);
    }
}

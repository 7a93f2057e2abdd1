package org.shelterwright.solver.route;

import java.util.Set;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.cable.RouteShape;
import org.shelterwright.layouts.layout.Run;
import org.shelterwright.layouts.ledger.cables.CableLimits;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * Whether units stand where a wire runs outside trays: in its way, or against a face along which it runs, so that it would lie
 * between two units.
 */
final class Blocked {
    private Blocked() {}

    static boolean is(Scene scene, LaidWire wire, Set<String> units) {
        RouteShape shape = wire.shape();
        Box hull = shape == null ? null : shape.hull();
        if (shape == null || hull == null) {
            return false;
        }
        for (String id : units) {
            PlacedUnit unit = scene.unit(id).orElse(null);
            if (unit == null || !reaches(unit, hull)) {
                continue;
            }
            for (Run run : shape.route().runs()) {
                for (int i = 1; run.tray() == null && i < run.path().size(); i++) {
                    Point a = run.path().get(i - 1);
                    Point b = run.path().get(i);
                    if (touches(unit, a, b) && (passes(unit, a, b) || besideAnother(scene, unit, a, b))) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private static boolean reaches(PlacedUnit unit, Box hull) {
        return unit.reach(Situation.ON_STATION).touches(hull)
                || unit.reach(Situation.ON_THE_ROAD).touches(hull);
    }

    private static boolean passes(PlacedUnit unit, Point a, Point b) {
        for (Situation situation : Situation.values()) {
            for (Box solid : unit.solids(situation)) {
                if (CableLimits.passes(a, b, solid)) {
                    return true;
                }
            }
        }
        return false;
    }

    private static boolean besideAnother(Scene scene, PlacedUnit unit, Point a, Point b) {
        for (PlacedUnit other : scene.units()) {
            if (other != unit && touches(other, a, b)) {
                return true;
            }
        }
        return false;
    }

    private static boolean touches(PlacedUnit unit, Point a, Point b) {
        Box straight = Box.between(a, a).hull(Box.between(b, b));
        for (Situation situation : Situation.values()) {
            for (Box solid : unit.solids(situation)) {
                if (straight.touches(solid)) {
                    return true;
                }
            }
        }
        return false;
    }
}

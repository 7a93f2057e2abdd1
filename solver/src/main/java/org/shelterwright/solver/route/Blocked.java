package org.shelterwright.solver.route;

import java.util.Set;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.layout.Run;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/** Whether units stand where a wire runs outside trays. */
final class Blocked {
    private Blocked() {}

    static boolean is(Scene scene, LaidWire wire, Set<String> units) {
        if (wire.shape() == null) {
            return false;
        }
        for (String id : units) {
            PlacedUnit unit = scene.unit(id).orElse(null);
            if (unit == null) {
                continue;
            }
            for (Run run : wire.shape().route().runs()) {
                for (int i = 1; run.tray() == null && i < run.path().size(); i++) {
                    Box straight = Box.between(run.path().get(i), run.path().get(i))
                            .hull(Box.between(run.path().get(i - 1), run.path().get(i - 1)));
                    if (meets(straight, unit.outline(Situation.ON_STATION))
                            || meets(straight, unit.outline(Situation.ON_THE_ROAD))) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private static boolean meets(Box a, Box b) {
        return a.x0() <= b.x1()
                && b.x0() <= a.x1()
                && a.y0() <= b.y1()
                && b.y0() <= a.y1()
                && a.z0() <= b.z1()
                && b.z0() <= a.z1();
    }
}

package org.shelterwright.solver.route;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.layout.Route;
import org.shelterwright.layouts.layout.Run;

/** The space round the runs of a power cable outside trays that others are to keep away from. */
final class Shunned {
    private Shunned() {}

    /** @param apart from the middle of the cable (µm) */
    static List<Box> of(Route route, int apart) {
        List<Box> boxes = new ArrayList<>();
        for (Run run : route.runs()) {
            for (int i = 1; run.tray() == null && i < run.path().size(); i++) {
                Point a = run.path().get(i - 1);
                Point b = run.path().get(i);
                Box straight = Box.between(a, a).hull(Box.between(b, b));
                boxes.add(straight.grown(
                        off(straight, Axis.X, apart), off(straight, Axis.Y, apart), off(straight, Axis.Z, apart)));
            }
        }
        return boxes;
    }

    private static int off(Box straight, Axis axis, int apart) {
        return straight.extent(axis) == 0 ? apart : 0;
    }
}

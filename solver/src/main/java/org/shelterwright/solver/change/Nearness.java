package org.shelterwright.solver.change;

import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/** Which units stand near others. */
final class Nearness {
    private final Scene scene;

    Nearness(Scene scene) {
        this.scene = scene;
    }

    /** All other units, those with the least gap to one of the given first. */
    List<String> nearest(Set<String> units) {
        List<Box> there = scene.units().stream()
                .filter(unit -> units.contains(unit.id()))
                .map(unit -> unit.outline(Situation.ON_STATION))
                .toList();
        return scene.units().stream()
                .filter(unit -> !units.contains(unit.id()))
                .sorted(Comparator.comparingLong((PlacedUnit unit) -> gap(unit, there))
                        .thenComparingInt(PlacedUnit::index))
                .map(PlacedUnit::id)
                .toList();
    }

    private static long gap(PlacedUnit unit, List<Box> there) {
        Box own = unit.outline(Situation.ON_STATION);
        long least = Long.MAX_VALUE;
        for (Box box : there) {
            long gap = 0;
            for (Axis axis : Axis.values()) {
                gap += Math.max(0, own.gap(box, axis));
            }
            least = Math.min(least, gap);
        }
        return least;
    }
}

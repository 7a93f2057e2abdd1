package org.shelterwright.layouts.edit;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Placement;

/**
 * Makes the gaps between units equal along an axis on station; the two outermost stay. What is mounted on or under them moves with
 * them, unless it is spread itself. Where the gaps do not come out in whole micrometres, each unit is at most one
 * micrometre lower than its exact place.
 *
 * @param units ids of at least three units, in any order
 */
public record SpreadUnits(List<String> units, Axis axis) implements Edit {
    public SpreadUnits {
        units = List.copyOf(new LinkedHashSet<>(units));
        if (units.size() < 3) {
            throw new IllegalArgumentException("Name at least three units to spread evenly.");
        }
    }

    @Override
    public String name() {
        return "Spread " + String.join(", ", units);
    }

    @Override
    public Layout apply(Layout layout) {
        List<String> sorted = units.stream()
                .sorted(Comparator.comparingInt(
                        (String unit) -> Units.outline(layout, unit).low(axis)))
                .toList();
        long free = (long) Units.outline(layout, sorted.get(sorted.size() - 1)).high(axis)
                - Units.outline(layout, sorted.get(0)).low(axis);
        for (String unit : sorted) {
            free -= Units.outline(layout, unit).extent(axis);
        }
        Map<String, Placement> moved = new LinkedHashMap<>();
        int filled = Units.outline(layout, sorted.get(0)).low(axis);
        for (int i = 0; i < sorted.size(); i++) {
            var outline = Units.outline(layout, sorted.get(i));
            int low = filled + (int) Math.floorDiv(free * i, (long) sorted.size() - 1);
            moved.put(sorted.get(i), Units.shifted(layout, sorted.get(i), axis, low - outline.low(axis)));
            filled += outline.extent(axis);
        }
        return Carried.move(layout, moved);
    }
}

package org.shelterwright.layouts.edit;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Placement;

/**
 * Brings units into one line with the first of them on station: their low ends, middles or high ends on an axis. What is mounted on
 * or under them moves with them, unless it is aligned itself. Exact, but for a middle between two micrometres: it is rounded
 * towards the low end.
 *
 * @param units ids of at least two units, the one that stays first
 */
public record AlignUnits(List<String> units, Axis axis, Edge edge) implements Edit {
    /** What of the units comes into line. */
    public enum Edge {
        LOW,
        MIDDLE,
        HIGH
    }

    public AlignUnits {
        units = List.copyOf(new LinkedHashSet<>(units));
        if (units.size() < 2) {
            throw new IllegalArgumentException("Name at least two units to align.");
        }
    }

    @Override
    public String name() {
        return "Align " + String.join(", ", units);
    }

    @Override
    public Layout apply(Layout layout) {
        int line = twice(Units.outline(layout, units.get(0)));
        Map<String, Placement> moved = new LinkedHashMap<>();
        for (String unit : units) {
            int shift = Math.floorDiv(line - twice(Units.outline(layout, unit)), 2);
            moved.put(unit, Units.shifted(layout, unit, axis, shift));
        }
        return Carried.move(layout, moved);
    }

    private int twice(Box outline) {
        return switch (edge) {
            case LOW -> 2 * outline.low(axis);
            case MIDDLE -> outline.low(axis) + outline.high(axis);
            case HIGH -> 2 * outline.high(axis);
        };
    }
}

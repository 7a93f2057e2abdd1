package org.shelterwright.layouts.revision;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * How a unit differs between two layouts.
 *
 * @param name as people call it
 * @param first where its low corner lies in the first; {@code null} if it is not there
 * @param second the same in the other
 * @param turned whether it is turned otherwise or mounted elsewhere
 * @param massKg mass that it has more in the other, contents included (kg); {@code null} if a mass is not known
 */
public record UnitShift(
        String name,
        @Nullable Point first,
        @Nullable Point second,
        boolean turned,
        @Nullable Double massKg) {
    /** The units that differ, in the order of the first brief, then those that only the other has. */
    public static List<UnitShift> between(Scene first, Scene second) {
        Set<String> ids = new LinkedHashSet<>();
        first.units().forEach(unit -> ids.add(unit.id()));
        second.units().forEach(unit -> ids.add(unit.id()));
        List<UnitShift> shifts = new ArrayList<>();
        for (String id : ids) {
            PlacedUnit a = first.unit(id).orElse(null);
            PlacedUnit b = second.unit(id).orElse(null);
            UnitShift shift = of(a, b);
            if (shift != null) {
                shifts.add(shift);
            }
        }
        return shifts;
    }

    private static @Nullable UnitShift of(@Nullable PlacedUnit a, @Nullable PlacedUnit b) {
        Point from = at(a);
        Point to = at(b);
        boolean turned = a != null
                && b != null
                && (!a.place(Situation.ON_STATION)
                                .pose()
                                .yaw()
                                .equals(b.place(Situation.ON_STATION).pose().yaw())
                        || a.place(Situation.ON_STATION).surface()
                                != b.place(Situation.ON_STATION).surface());
        Double mass = mass(a, b);
        boolean same = from != null && from.equals(to) && !turned && (mass == null || mass == 0);
        PlacedUnit named = a == null ? b : a;
        return same || named == null ? null : new UnitShift(named.name(), from, to, turned, mass);
    }

    private static @Nullable Double mass(@Nullable PlacedUnit a, @Nullable PlacedUnit b) {
        Double first =
                a == null ? Double.valueOf(0) : a.mass(Situation.ON_THE_ROAD).massKg();
        Double second =
                b == null ? Double.valueOf(0) : b.mass(Situation.ON_THE_ROAD).massKg();
        return first == null || second == null ? null : Double.valueOf(second - first);
    }

    private static @Nullable Point at(@Nullable PlacedUnit unit) {
        return unit == null ? null : unit.outline(Situation.ON_STATION).low();
    }
}

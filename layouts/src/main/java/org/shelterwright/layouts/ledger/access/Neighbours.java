package org.shelterwright.layouts.ledger.access;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.body.Intrusion;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;

/** What stands on both sides of a narrow place of the floor. */
record Neighbours(List<PlacedUnit> units, List<String> names) {
    /** Finds what touches the two long sides of a rectangle, or lies behind its corners. */
    static Neighbours of(Floor floor, Rect narrow) {
        boolean alongX = narrow.x1() - narrow.x0() <= narrow.y1() - narrow.y0();
        Axis axis = alongX ? Axis.X : Axis.Y;
        List<PlacedUnit> units = new ArrayList<>();
        List<String> names = new ArrayList<>();
        Box room = floor.scene().body().inside().box();
        Box gap = narrow.at(0, 1);
        for (PlacedUnit unit : floor.scene().units()) {
            if (!Floor.pushedAside(unit)
                    && unit.solids(Situation.ON_STATION).stream()
                            .anyMatch(solid -> floor.inTheWay(solid) && touches(solid, gap, axis))) {
                units.add(unit);
                names.add(unit.name());
            }
        }
        for (Intrusion intrusion : floor.scene().body().intrusions()) {
            if (floor.inTheWay(intrusion.box()) && touches(intrusion.box(), gap, axis)) {
                names.add(intrusion.name());
            }
        }
        if (gap.low(axis) == room.low(axis)) {
            names.add(Wording.surface(alongX ? Face.REAR : Face.RIGHT));
        }
        if (gap.high(axis) == room.high(axis)) {
            names.add(Wording.surface(alongX ? Face.FRONT : Face.LEFT));
        }
        return new Neighbours(units, names);
    }

    private static boolean touches(Box solid, Box gap, Axis axis) {
        Axis other = axis == Axis.X ? Axis.Y : Axis.X;
        boolean beside = solid.low(other) <= gap.high(other) && gap.low(other) <= solid.high(other);
        return beside && (solid.high(axis) == gap.low(axis) || solid.low(axis) == gap.high(axis));
    }

    /** Such as " between Rack 1 and the left wall"; empty if nothing was found. */
    String words() {
        if (names.isEmpty()) {
            return "";
        }
        return (names.size() == 1 ? " at " : " between ") + Wording.list(names);
    }
}

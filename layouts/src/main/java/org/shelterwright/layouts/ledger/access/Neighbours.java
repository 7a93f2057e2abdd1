package org.shelterwright.layouts.ledger.access;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Intrusion;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;

/**
 * What stands on both sides of a narrow place of the floor.
 *
 * @param place the part of the narrow place along which it stands
 * @param units the units among it
 * @param names of all of it, walls included
 */
record Neighbours(Rect place, List<PlacedUnit> units, List<String> names) {
    /** Finds what touches the two long sides of a rectangle, or lies behind its corners. */
    static Neighbours of(Floor floor, Rect narrow) {
        boolean alongX = narrow.x1() - narrow.x0() <= narrow.y1() - narrow.y0();
        Axis axis = alongX ? Axis.X : Axis.Y;
        List<PlacedUnit> units = new ArrayList<>();
        List<String> names = new ArrayList<>();
        Box room = floor.scene().body().inside().box();
        Box gap = narrow.at(0, 1);
        Box along = null;
        for (PlacedUnit unit : floor.scene().units()) {
            Box touching = Floor.pushedAside(unit) ? null : touching(floor, unit, gap, axis);
            if (touching != null) {
                units.add(unit);
                names.add(unit.name());
                along = along == null ? touching : along.hull(touching);
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
        return new Neighbours(along == null ? narrow : clipped(narrow, Rect.of(along), alongX), units, names);
    }

    private static @Nullable Box touching(Floor floor, PlacedUnit unit, Box gap, Axis axis) {
        return unit.solids(Situation.ON_STATION).stream()
                .filter(solid -> floor.inTheWay(solid) && touches(solid, gap, axis))
                .reduce(Box::hull)
                .orElse(null);
    }

    private static Rect clipped(Rect narrow, Rect along, boolean alongX) {
        return alongX
                ? new Rect(
                        narrow.x0(), Math.max(narrow.y0(), along.y0()), narrow.x1(), Math.min(narrow.y1(), along.y1()))
                : new Rect(
                        Math.max(narrow.x0(), along.x0()), narrow.y0(), Math.min(narrow.x1(), along.x1()), narrow.y1());
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

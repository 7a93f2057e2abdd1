package org.shelterwright.layouts.ledger.mass;

import org.shelterwright.catalog.space.Axis;
import org.shelterwright.layouts.layout.Pin;
import org.shelterwright.layouts.ledger.mend.Amounts;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/** Says which one unit to move, and how far, to bring a moment of mass where it should be. */
public final class ShiftMend {
    private ShiftMend() {}

    /**
     * Names the heaviest unit that may move along an axis.
     *
     * @param momentKgM moment that is wanted more along the axis (kg·m); below zero for less
     */
    public static String of(Scene scene, Axis axis, double momentKgM) {
        PlacedUnit heaviest = null;
        double heaviestKg = 0;
        for (PlacedUnit unit : scene.units()) {
            Double massKg = unit.item().mass().massKg();
            if (massKg != null
                    && massKg > heaviestKg
                    && !pinned(unit.placement().pin(), axis)) {
                heaviest = unit;
                heaviestKg = massKg;
            }
        }
        String way = way(axis, momentKgM > 0);
        return heaviest == null ? "Move mass " + way + "." : sentence(heaviest, Math.abs(momentKgM) / heaviestKg, way);
    }

    private static String sentence(PlacedUnit unit, double shiftM, String way) {
        return "Move mass " + way + ": " + unit.name() + " alone would do it with " + Amounts.mm(shiftM) + ".";
    }

    private static boolean pinned(Pin pin, Axis axis) {
        return switch (axis) {
            case X -> pin.x();
            case Y -> pin.y();
            case Z -> pin.z();
        };
    }

    private static String way(Axis axis, boolean up) {
        return switch (axis) {
            case X -> up ? "forward" : "to the rear";
            case Y -> up ? "to the left" : "to the right";
            case Z -> up ? "up" : "down";
        };
    }
}

package org.shelterwright.layouts.ledger.mass;

import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
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
            Double massKg = unit.mass(Situation.ON_THE_ROAD).massKg();
            if (massKg != null
                    && massKg > heaviestKg
                    && !pinned(unit.placement().pin(), axis)) {
                heaviest = unit;
                heaviestKg = massKg;
            }
        }
        String way = way(axis, momentKgM > 0);
        if (heaviest == null) {
            return "Move mass " + way + ".";
        }
        return sentence(heaviest, Math.abs(momentKgM) / heaviestKg, way, roomM(scene, heaviest, axis, momentKgM > 0));
    }

    private static double roomM(Scene scene, PlacedUnit unit, Axis axis, boolean up) {
        Box outline = unit.outline(Situation.ON_THE_ROAD);
        Box room = scene.body().inside().box();
        return Lengths.metres(up ? room.high(axis) - outline.high(axis) : outline.low(axis) - room.low(axis));
    }

    private static String sentence(PlacedUnit unit, double shiftM, String way, double roomM) {
        if (shiftM > roomM) {
            return "Move mass " + way + ", of several units: " + unit.name() + ", the heaviest, is not enough alone.";
        }
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

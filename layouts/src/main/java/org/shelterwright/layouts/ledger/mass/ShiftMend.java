package org.shelterwright.layouts.ledger.mass;

import java.util.function.ToDoubleFunction;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
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
        return of(scene, axis, momentKgM, at -> 1);
    }

    /**
     * Names the unit that does most when it moves along an axis.
     *
     * @param wanted what is wanted more of a quantity; below zero for less
     * @param perKgM what a moment of 1 kg·m along the axis adds to it where a mass stands, in the frame of the body
     */
    public static String of(Scene scene, Axis axis, double wanted, ToDoubleFunction<Point> perKgM) {
        PlacedUnit best = null;
        double bestDoes = 0;
        for (PlacedUnit unit : scene.units()) {
            Double massKg = unit.mass(Situation.ON_THE_ROAD).massKg();
            if (massKg != null && !pinned(unit.placement().pin(), axis)) {
                double does = massKg * perKgM.applyAsDouble(centre(unit));
                if (does > bestDoes) {
                    best = unit;
                    bestDoes = does;
                }
            }
        }
        String way = way(axis, wanted > 0);
        if (best == null) {
            return "Move mass " + way + ".";
        }
        return sentence(best, Math.abs(wanted) / bestDoes, way, roomM(scene, best, axis, wanted > 0));
    }

    private static Point centre(PlacedUnit unit) {
        Point centre = unit.mass(Situation.ON_THE_ROAD).centre();
        return centre == null
                ? unit.outline(Situation.ON_THE_ROAD).centre()
                : unit.pose(Situation.ON_THE_ROAD).apply(centre, unit.item().size());
    }

    private static double roomM(Scene scene, PlacedUnit unit, Axis axis, boolean up) {
        Box outline = unit.outline(Situation.ON_THE_ROAD);
        Box room = scene.body().inside().box();
        return Lengths.metres(up ? room.high(axis) - outline.high(axis) : outline.low(axis) - room.low(axis));
    }

    private static String sentence(PlacedUnit unit, double shiftM, String way, double roomM) {
        if (shiftM > roomM) {
            return "Move mass " + way + ", of several units: " + unit.name()
                    + ", which would do most, is not enough alone.";
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

package org.shelterwright.layouts.ledger.mend;

import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * The least shift along one axis that frees solids from others, exact: along a direction each pair of cuboids forbids
 * one open interval of shifts, and the shift steps over them.
 */
public final class Separation {
    private Separation() {}

    /**
     * How far the moving cuboids must go one way until they overlap none of the fixed ones (µm); zero if they already do
     * not. Cost: at most the square of the number of overlapping pairs.
     */
    public static int along(Face way, List<Box> moving, List<Box> fixed) {
        Axis axis = way.axis();
        int shift = 0;
        boolean stepped = true;
        while (stepped) {
            stepped = false;
            for (Box m : moving) {
                for (Box f : fixed) {
                    if (at(m, axis, way.sign() * shift).overlaps(f)) {
                        shift = way.sign() > 0 ? f.high(axis) - m.low(axis) : m.high(axis) - f.low(axis);
                        stepped = true;
                    }
                }
            }
        }
        return shift;
    }

    /**
     * The least shift of a unit along its surface that frees its solids from others and keeps it inside the body; empty
     * if there is none. Others that it may meet on the way are not looked at.
     */
    public static Optional<Shift> least(Scene scene, PlacedUnit unit, Situation situation, List<Box> fixed) {
        Box inside = scene.body().inside().box();
        Shift best = null;
        for (Face way : ways(unit, situation)) {
            int length = along(way, unit.solids(situation), fixed);
            Shift shift = new Shift(way, length);
            boolean shorter = best == null || length < best.length();
            if (shorter && inside.contains(unit.outline(situation).moved(shift.vector()))) {
                best = shift;
            }
        }
        return Optional.ofNullable(best);
    }

    /** The ways that a unit may be shifted without leaving its surface. */
    private static List<Face> ways(PlacedUnit unit, Situation situation) {
        if (unit.place(situation).surface() != Surface.WALL) {
            return List.of(Face.FRONT, Face.REAR, Face.LEFT, Face.RIGHT);
        }
        return unit.pose(situation).apply(Face.REAR).axis() == Axis.X
                ? List.of(Face.LEFT, Face.RIGHT, Face.TOP, Face.BOTTOM)
                : List.of(Face.FRONT, Face.REAR, Face.TOP, Face.BOTTOM);
    }

    private static Box at(Box box, Axis axis, int shift) {
        return switch (axis) {
            case X -> box.moved(shift, 0, 0);
            case Y -> box.moved(0, shift, 0);
            case Z -> box.moved(0, 0, shift);
        };
    }
}

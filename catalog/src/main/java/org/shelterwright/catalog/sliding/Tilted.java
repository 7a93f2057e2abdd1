package org.shelterwright.catalog.sliding;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;

/** A thing of cuboids tilted over by a quarter on one of its upright sides, about the lower edge of that side. */
final class Tilted {
    /** Steps by which the arc of the tilt is covered; with these the cover is at most a few per cent too high. */
    private static final int STEPS = 12;

    private Tilted() {}

    /** The cuboids of the thing once it lies on a side. */
    static List<Box> by(List<Box> parts, Face side) {
        Box hull = Turned.hull(parts);
        return parts.stream().map(part -> by(part, hull, side)).toList();
    }

    private static Box by(Box part, Box hull, Face side) {
        Axis axis = side.axis();
        int pivot = pivot(hull, side);
        int low = side.sign() > 0 ? pivot + part.z0() - hull.z0() : pivot - (part.z1() - hull.z0());
        int high = side.sign() > 0 ? pivot + part.z1() - hull.z0() : pivot - (part.z0() - hull.z0());
        int near = Math.abs(pivot - (side.sign() > 0 ? part.high(axis) : part.low(axis)));
        int far = Math.abs(pivot - (side.sign() > 0 ? part.low(axis) : part.high(axis)));
        return set(part, axis, low, high, hull.z0() + near, hull.z0() + far);
    }

    /**
     * Cuboids that hold all that the least cuboid about the thing passes through on its way from upright to lying. Its upper
     * corner runs along an arc of radius √(w² + h²) about the edge; the arc is covered by steps, rounded outward: a safe bound.
     */
    static List<Box> sweep(List<Box> parts, Face side) {
        Box hull = Turned.hull(parts);
        Axis axis = side.axis();
        long width = hull.extent(axis);
        long height = hull.extent(Axis.Z);
        List<Box> sweep = new ArrayList<>();
        for (int i = 0; i < STEPS; i++) {
            step(sweep, hull, side, -width * (STEPS - i) / STEPS, -width * (STEPS - i - 1) / STEPS, width, height);
            step(sweep, hull, side, height * i / STEPS, height * (i + 1) / STEPS, width, height);
        }
        return sweep;
    }

    /** One step of the cover, from one distance of the edge to another, outward. */
    private static void step(List<Box> sweep, Box hull, Face side, long from, long to, long width, long height) {
        if (from == to) {
            return;
        }
        long nearest = from >= 0 ? from : -to;
        int top = Math.toIntExact(hull.z0() + Turned.rootUp(width * width + height * height - nearest * nearest));
        int pivot = pivot(hull, side);
        int a = Math.toIntExact(pivot + side.sign() * from);
        int b = Math.toIntExact(pivot + side.sign() * to);
        sweep.add(set(hull, side.axis(), Math.min(a, b), Math.max(a, b), hull.z0(), top));
    }

    private static int pivot(Box hull, Face side) {
        return side.sign() > 0 ? hull.high(side.axis()) : hull.low(side.axis());
    }

    private static Box set(Box box, Axis axis, int low, int high, int z0, int z1) {
        return axis == Axis.X
                ? new Box(low, box.y0(), z0, high, box.y1(), z1)
                : new Box(box.x0(), low, z0, box.x1(), high, z1);
    }
}

package org.shelterwright.catalog.sliding;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;

/** A thing of cuboids turned by quarters about an upright line through a whole point, so that it stays exact. */
final class Turned {
    private Turned() {}

    /** The middle of the least cuboid that holds all parts: the line that the thing is turned about. */
    static Point pivot(List<Box> parts) {
        return hull(parts).centre();
    }

    static Box hull(List<Box> parts) {
        return parts.stream().reduce(Box::hull).orElseThrow();
    }

    static List<Box> by(List<Box> parts, int quarters, Point pivot) {
        return parts.stream().map(part -> by(part, quarters, pivot)).toList();
    }

    private static Box by(Box b, int quarters, Point pivot) {
        int x0 = b.x0() - pivot.x();
        int y0 = b.y0() - pivot.y();
        int x1 = b.x1() - pivot.x();
        int y1 = b.y1() - pivot.y();
        Box turned = switch (quarters) {
            case 0 -> new Box(x0, y0, b.z0(), x1, y1, b.z1());
            case 1 -> new Box(-y1, x0, b.z0(), -y0, x1, b.z1());
            case 2 -> new Box(-x1, -y1, b.z0(), -x0, -y0, b.z1());
            default -> new Box(y0, -x1, b.z0(), y1, -x0, b.z1());
        };
        return turned.moved(pivot.x(), pivot.y(), 0);
    }

    /**
     * Cuboids that hold all that the thing passes through when it is turned about the pivot. Each part's disc of radius r is
     * covered by two crossed bars of half width a and a square of half side √(r² − a²), rounded outward: a safe bound, about
     * 8 % wider than the disc.
     */
    static List<Box> sweep(List<Box> parts, Point pivot) {
        List<Box> sweep = new ArrayList<>();
        for (Box part : parts) {
            long dx = Math.max(Math.abs((long) part.x0() - pivot.x()), Math.abs((long) part.x1() - pivot.x()));
            long dy = Math.max(Math.abs((long) part.y0() - pivot.y()), Math.abs((long) part.y1() - pivot.y()));
            long r = rootUp(dx * dx + dy * dy);
            long a = (r * 3827 + 9999) / 10_000;
            long b = rootUp(r * r - a * a);
            sweep.add(around(pivot, r, a, part));
            sweep.add(around(pivot, a, r, part));
            sweep.add(around(pivot, b, b, part));
        }
        return sweep;
    }

    private static Box around(Point pivot, long halfX, long halfY, Box part) {
        return new Box(
                Math.toIntExact(pivot.x() - halfX),
                Math.toIntExact(pivot.y() - halfY),
                part.z0(),
                Math.toIntExact(pivot.x() + halfX),
                Math.toIntExact(pivot.y() + halfY),
                part.z1());
    }

    /** The least whole number whose square is not below the given one. */
    static long rootUp(long square) {
        long root = (long) Math.sqrt((double) square);
        while (root * root < square) {
            root++;
        }
        while (root > 0 && (root - 1) * (root - 1) >= square) {
            root--;
        }
        return root;
    }
}

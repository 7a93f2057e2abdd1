package org.shelterwright.solver.route.drop;

import java.util.Arrays;
import java.util.List;
import java.util.TreeSet;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;

/**
 * The planes of all faces in a part of the room, with those of port and target: cheapest runs need no others, as shortest runs
 * among cuboids never do (Hanan's argument), save where a bend needs room; so planes at one and two bend radii from the ends
 * are added. Faces of zones are no planes: a step that enters a zone counts as in it. Prices are worked out once for each step.
 */
final class Lattice {
    private final int[][] planes = new int[3][];
    private final int[] stride = new int[3];
    private final Box room;
    private final int[][] solids;
    private final int[][] zones;
    private final int[][] shunned;
    private final byte[] prices;
    private final int[] low = new int[3];
    private final int[] high = new int[3];

    Lattice(Surroundings about, Box part, Point start, Target target, int radius) {
        this.room = about.room();
        List<Box> near =
                about.solids().stream().filter(solid -> touches(solid, part)).toList();
        for (Axis axis : Axis.values()) {
            TreeSet<Integer> found = new TreeSet<>();
            near.forEach(solid -> {
                found.add(solid.low(axis));
                found.add(solid.high(axis));
            });
            about.shunned().forEach(box -> {
                found.add(box.low(axis));
                found.add(box.high(axis));
            });
            spread(found, start.along(axis), radius);
            target.path().forEach(point -> spread(found, point.along(axis), radius));
            found.add(room.low(axis));
            found.add(room.high(axis));
            planes[axis.ordinal()] = found.stream()
                    .filter(at -> at >= part.low(axis) && at <= part.high(axis))
                    .mapToInt(at -> at)
                    .toArray();
            low[axis.ordinal()] = room.low(axis);
            high[axis.ordinal()] = room.high(axis);
        }
        stride[2] = 1;
        stride[1] = planes[2].length;
        stride[0] = planes[1].length * planes[2].length;
        solids = flat(near);
        zones = flat(about.zones().stream().filter(zone -> touches(zone, part)).toList());
        shunned = flat(about.shunned());
        prices = new byte[3 * stride[0] * planes[0].length];
    }

    int node(Point at) {
        int node = 0;
        for (Axis axis : Axis.values()) {
            node += stride[axis.ordinal()] * Arrays.binarySearch(planes[axis.ordinal()], at.along(axis));
        }
        return node;
    }

    Point point(int node) {
        return new Point(at(node, 0), at(node, 1), at(node, 2));
    }

    /** Distance along the axes from a node to a target (µm). */
    long away(int node, Target target) {
        return target.distance(at(node, 0), at(node, 1), at(node, 2));
    }

    int next(int node, int axis, boolean up) {
        return up ? node + stride[axis] : node - stride[axis];
    }

    /** Length of a step (µm). */
    int step(int node, int axis, boolean up) {
        return Math.abs(at(next(node, axis, up), axis) - at(node, axis));
    }

    /** What a micrometre of a step costs; 0 if no cable can be there. */
    int price(int node, int axis, boolean up) {
        int index = index(node, axis);
        if (up ? index + 1 >= planes[axis].length : index == 0) {
            return 0;
        }
        int from = up ? node : node - stride[axis];
        int slot = 3 * from + axis;
        if (prices[slot] == 0) {
            prices[slot] = (byte) (1 + worked(from, axis));
        }
        return prices[slot] - 1;
    }

    private int index(int node, int axis) {
        return node / stride[axis] % planes[axis].length;
    }

    private int at(int node, int axis) {
        return planes[axis][index(node, axis)];
    }

    private int worked(int node, int axis) {
        int a = at(node, axis);
        int b = planes[axis][index(node, axis) + 1];
        int au = (axis + 1) % 3;
        int av = (axis + 2) % 3;
        int u = at(node, au);
        int v = at(node, av);
        int covered = 0;
        for (int[] s : solids) {
            if (s[axis] < b && a < s[axis + 3] && s[au] <= u && u <= s[au + 3] && s[av] <= v && v <= s[av + 3]) {
                covered |= quarters(s[au] < u, u < s[au + 3], s[av] < v, v < s[av + 3]);
                if (covered == 15) {
                    return 0;
                }
            }
        }
        if (within(shunned, axis, a, b, au, u, av, v)) {
            return Laying.SHUNNED;
        }
        boolean zone = within(zones, axis, a, b, au, u, av, v);
        boolean floor = au == 2 && u == low[2] || av == 2 && v == low[2];
        if (floor) {
            return zone ? Laying.HANGING_IN_ZONE : Laying.FLOOR;
        }
        boolean wall = u == low[au] || u == high[au] || v == low[av] || v == high[av];
        if (covered != 0 || wall) {
            return zone ? Laying.SURFACE_IN_ZONE : Laying.SURFACE;
        }
        return zone ? Laying.HANGING_IN_ZONE : Laying.HANGING;
    }

    /** Which of the four quarters round a straight a solid fills. */
    private static int quarters(boolean uLow, boolean uHigh, boolean vLow, boolean vHigh) {
        return (uLow && vLow ? 1 : 0) | (uLow && vHigh ? 2 : 0) | (uHigh && vLow ? 4 : 0) | (uHigh && vHigh ? 8 : 0);
    }

    private static boolean within(int[][] boxes, int axis, int a, int b, int au, int u, int av, int v) {
        for (int[] s : boxes) {
            if (s[axis] < b && a < s[axis + 3] && s[au] < u && u < s[au + 3] && s[av] < v && v < s[av + 3]) {
                return true;
            }
        }
        return false;
    }

    private static void spread(TreeSet<Integer> found, int at, int radius) {
        for (int times = -2; times <= 2; times++) {
            found.add(at + times * radius);
        }
    }

    private static int[][] flat(List<Box> boxes) {
        return boxes.stream()
                .map(box -> new int[] {box.x0(), box.y0(), box.z0(), box.x1(), box.y1(), box.z1()})
                .toArray(int[][]::new);
    }

    private static boolean touches(Box a, Box b) {
        return a.x0() <= b.x1()
                && b.x0() <= a.x1()
                && a.y0() <= b.y1()
                && b.y0() <= a.y1()
                && a.z0() <= b.z1()
                && b.z0() <= a.z1();
    }
}

package org.shelterwright.solver.route.drop;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;

/**
 * The planes of all faces in a part of the room, with those of port and target: cheapest runs need no others, as shortest runs
 * among cuboids never do (Hanan's argument), save where a bend needs room; so planes at one and two bend radii from the ends
 * are added. Faces of zones are no planes: a step that enters a zone counts as in it. Directions are numbered 2 × axis, and
 * one more upwards.
 */
final class Lattice {
    private final int[][] planes = new int[3][];
    private final int[] stride = new int[3];
    private final int[] low;
    private final int[] high;
    private final int[] partLow;
    private final int[] partHigh;
    private final int[][] line;
    private final byte[] prices;
    private final byte[] ways;

    Lattice(Obstacles about, Box part, Point start, Target target, int radius) {
        int[][] solids = Obstacles.near(about.solids(), part);
        low = corner(about.room(), false);
        high = corner(about.room(), true);
        partLow = corner(part, false);
        partHigh = corner(part, true);
        line = line(target);
        int most = 2 * solids.length + 2 * about.shunned().length + 5 * (1 + line.length) + 2;
        for (Axis axis : Axis.values()) {
            planes[axis.ordinal()] =
                    planes(axis.ordinal(), new int[most], solids, about.shunned(), start.along(axis), radius);
        }
        stride[2] = 1;
        stride[1] = planes[2].length;
        stride[0] = planes[1].length * planes[2].length;
        ways = new byte[size()];
        prices = new Paint(planes, low, high).prices(solids, Obstacles.near(about.zones(), part), about.shunned());
    }

    private int[] planes(int axis, int[] found, int[][] solids, int[][] shunned, int start, int radius) {
        int count = 0;
        for (int[] solid : solids) {
            found[count++] = solid[axis];
            found[count++] = solid[axis + 3];
        }
        for (int[] box : shunned) {
            found[count++] = box[axis];
            found[count++] = box[axis + 3];
        }
        for (int times = -2; times <= 2; times++) {
            found[count++] = start + times * radius;
            for (int[] point : line) {
                found[count++] = point[axis] + times * radius;
            }
        }
        found[count++] = low[axis];
        found[count++] = high[axis];
        Arrays.sort(found, 0, count);
        int kept = 0;
        for (int i = 0; i < count; i++) {
            int at = found[i];
            if (at >= partLow[axis] && at <= partHigh[axis] && (kept == 0 || found[kept - 1] != at)) {
                found[kept++] = at;
            }
        }
        return Arrays.copyOf(found, kept);
    }

    private static int[] corner(Box box, boolean high) {
        return high ? new int[] {box.x1(), box.y1(), box.z1()} : new int[] {box.x0(), box.y0(), box.z0()};
    }

    private static int[][] line(Target target) {
        int[][] line = new int[target.path().size()][];
        for (int i = 0; i < line.length; i++) {
            Point point = target.path().get(i);
            line[i] = new int[] {point.x(), point.y(), point.z()};
        }
        return line;
    }

    /** How many nodes it has. */
    int size() {
        return stride[0] * planes[0].length;
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

    /** The nodes that lie on the target. */
    int[] targets() {
        int[] found = new int[line.length * (planes[0].length + planes[1].length + planes[2].length)];
        int count = 0;
        for (int i = 0; i < line.length; i++) {
            int[] a = line[Math.max(0, i - 1)];
            int[] b = line[i];
            int[] from = new int[3];
            int[] to = new int[3];
            for (int axis = 0; axis < 3; axis++) {
                from[axis] = Paint.first(planes[axis], Math.min(a[axis], b[axis]));
                to[axis] = Paint.first(planes[axis], Math.max(a[axis], b[axis]) + 1) - 1;
            }
            for (int x = from[0]; x <= to[0]; x++) {
                for (int y = from[1]; y <= to[1]; y++) {
                    for (int z = from[2]; z <= to[2]; z++) {
                        found[count++] = x * stride[0] + y * stride[1] + z;
                    }
                }
            }
        }
        return Arrays.copyOf(found, count);
    }

    /** The numbers of the planes that a node lies in, by axis. */
    void indices(int node, int[] into) {
        into[0] = node / stride[0];
        int rest = node - into[0] * stride[0];
        into[1] = rest / stride[1];
        into[2] = rest - into[1] * stride[1];
    }

    /** Places of the planes across an axis, rising; not to be changed. */
    int[] planes(int axis) {
        return planes[axis];
    }

    /** Distance of two planes across an axis (µm). */
    int length(int axis, int one, int other) {
        return Math.abs(planes[axis][other] - planes[axis][one]);
    }

    /** By how much numbers of nodes differ from plane to plane. */
    int stride(int axis) {
        return stride[axis];
    }

    /** Whether a node lies where the part that is looked at ends and the room does not. */
    boolean onRim(int[] indices) {
        for (int axis = 0; axis < 3; axis++) {
            int index = indices[axis];
            if (index == 0 && partLow[axis] > low[axis]
                    || index == planes[axis].length - 1 && partHigh[axis] < high[axis]) {
                return true;
            }
        }
        return false;
    }

    /** How many corners it takes at least from a node to the target, for one who comes in a direction, -1 for none. */
    int corners(int node, int[] indices, int direction) {
        if (line.length > 2) {
            int least = 3;
            for (int i = 1; i < line.length; i++) {
                least = Math.min(least, turns(ways(indices, line[i - 1], line[i]), direction));
            }
            return least;
        }
        return turns(ways(node, indices), direction);
    }

    private static int turns(int ways, int direction) {
        boolean onWay = ways != 0 && (direction < 0 || (ways >> direction & 1) == 1);
        return Integer.bitCount(ways) - (onWay ? 1 : 0);
    }

    /** The directions in which a target of one straight lies from a node, worked out once for each. */
    private int ways(int node, int[] indices) {
        if (ways[node] == 0) {
            ways[node] = (byte) (1 + ways(indices, line[0], line[line.length - 1]));
        }
        return ways[node] - 1;
    }

    private int ways(int[] indices, int[] a, int[] b) {
        return way(planes[0][indices[0]], a[0], b[0], 0)
                | way(planes[1][indices[1]], a[1], b[1], 2)
                | way(planes[2][indices[2]], a[2], b[2], 4);
    }

    /** The bit of the direction in which a span lies from a place; 0 if the place is in it. */
    private static int way(int at, int a, int b, int direction) {
        return at < Math.min(a, b) ? 2 << direction : at > Math.max(a, b) ? 1 << direction : 0;
    }

    /** Whether a node lies on the target. */
    boolean onTarget(int node, int[] indices) {
        if (line.length <= 2) {
            return ways(node, indices) == 0;
        }
        for (int i = 1; i < line.length; i++) {
            if (ways(indices, line[i - 1], line[i]) == 0) {
                return true;
            }
        }
        return false;
    }

    /** The axis along which the target runs at a node; {@code null} of a single point. */
    @Nullable
    Axis along(int node, Target target) {
        return target.along(at(node, 0), at(node, 1), at(node, 2));
    }

    /** The node a step away. */
    int next(int node, int direction) {
        return (direction & 1) == 1 ? node + stride[direction >> 1] : node - stride[direction >> 1];
    }

    /** What a micrometre of a step costs; 0 if no cable can be there. */
    int price(int node, int direction) {
        return prices[6 * node + direction];
    }

    private int index(int node, int axis) {
        return switch (axis) {
            case 0 -> node / stride[0];
            case 1 -> node / stride[1] % planes[1].length;
            default -> node % stride[1];
        };
    }

    private int at(int node, int axis) {
        return planes[axis][index(node, axis)];
    }
}

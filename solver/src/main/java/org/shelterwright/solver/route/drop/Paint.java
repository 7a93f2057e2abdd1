package org.shelterwright.solver.route.drop;

import java.util.Arrays;

/**
 * Works out what the steps of a lattice cost, by painting each cuboid over the steps that it concerns: cost is what the cuboids
 * cover, not steps times cuboids.
 */
final class Paint {
    private static final int QUARTERS = 15;
    private static final int ZONE = 16;
    private static final int SHUN = 32;
    private static final int WALL = 64;
    private static final int ON_FLOOR = 128;
    private static final byte[] PRICES = new byte[256];

    static {
        for (int marks = 0; marks < PRICES.length; marks++) {
            PRICES[marks] = price(marks);
        }
    }

    private final int[][] planes;
    private final int[] low;
    private final int[] high;
    private final int[] stride = new int[3];
    private final byte[] marks;

    /**
     * @param planes coordinates along each axis, rising
     * @param low lower corner of the room
     * @param high upper corner of the room
     */
    Paint(int[][] planes, int[] low, int[] high) {
        this.planes = planes;
        this.low = low;
        this.high = high;
        stride[2] = 1;
        stride[1] = planes[2].length;
        stride[0] = planes[1].length * planes[2].length;
        marks = new byte[3 * stride[0] * planes[0].length];
    }

    /** Price by 6 × node + direction; 0 where no cable can be. */
    byte[] prices(int[][] solids, int[][] zones, int[][] shunned) {
        for (int axis = 0; axis < 3; axis++) {
            for (int[] solid : solids) {
                solid(axis, solid);
            }
            for (int[] zone : zones) {
                inside(axis, zone, ZONE);
            }
            for (int[] box : shunned) {
                inside(axis, box, SHUN);
            }
        }
        byte[] prices = new byte[2 * marks.length];
        for (int axis = 0; axis < 3; axis++) {
            price(axis, prices);
        }
        return prices;
    }

    /** The first plane at a place or above. */
    static int first(int[] planes, int at) {
        int found = Arrays.binarySearch(planes, at);
        return found < 0 ? -found - 1 : found;
    }

    /** Marks the quarters round each step along an axis that a solid fills. */
    private void solid(int axis, int[] s) {
        int au = (axis + 1) % 3;
        int av = (axis + 2) % 3;
        int from = begin(axis, s);
        int to = end(axis, s);
        int uTo = first(planes[au], s[au + 3] + 1);
        int vTo = first(planes[av], s[av + 3] + 1);
        for (int u = first(planes[au], s[au]); u < uTo; u++) {
            int ofU = (planes[au][u] > s[au] ? 3 : 0) | (planes[au][u] < s[au + 3] ? 12 : 0);
            for (int v = first(planes[av], s[av]); v < vTo; v++) {
                int ofV = (planes[av][v] > s[av] ? 5 : 0) | (planes[av][v] < s[av + 3] ? 10 : 0);
                mark(axis, from, to, u * stride[au] + v * stride[av], ofU & ofV);
            }
        }
    }

    /** Marks the steps along an axis that lie within a cuboid, if only with a part of them. */
    private void inside(int axis, int[] s, int mark) {
        int au = (axis + 1) % 3;
        int av = (axis + 2) % 3;
        int from = begin(axis, s);
        int to = end(axis, s);
        int uTo = first(planes[au], s[au + 3]);
        int vTo = first(planes[av], s[av + 3]);
        for (int u = first(planes[au], s[au] + 1); u < uTo; u++) {
            for (int v = first(planes[av], s[av] + 1); v < vTo; v++) {
                mark(axis, from, to, u * stride[au] + v * stride[av], mark);
            }
        }
    }

    /** The first step along an axis that reaches into a cuboid: the one that ends beyond its lower face. */
    private int begin(int axis, int[] s) {
        return Math.max(0, first(planes[axis], s[axis] + 1) - 1);
    }

    /** One behind the last step along an axis that reaches into a cuboid: the one that begins before its upper face. */
    private int end(int axis, int[] s) {
        return Math.min(planes[axis].length - 1, first(planes[axis], s[axis + 3]));
    }

    private void mark(int axis, int from, int to, int at, int mark) {
        for (int k = from; k < to; k++) {
            marks[3 * (at + k * stride[axis]) + axis] |= (byte) mark;
        }
    }

    private void price(int axis, byte[] prices) {
        int au = (axis + 1) % 3;
        int av = (axis + 2) % 3;
        int ahead = 6 * stride[axis] + 2 * axis;
        for (int u = 0; u < planes[au].length; u++) {
            int ofU = sides(au, planes[au][u]);
            for (int v = 0; v < planes[av].length; v++) {
                int sides = ofU | sides(av, planes[av][v]);
                int node = u * stride[au] + v * stride[av];
                for (int k = 1; k < planes[axis].length; k++) {
                    byte price = PRICES[marks[3 * node + axis] | sides];
                    prices[6 * node + 2 * axis + 1] = price;
                    prices[6 * node + ahead] = price;
                    node += stride[axis];
                }
            }
        }
    }

    /** Whether a plane is a wall, and whether it is the floor. */
    private int sides(int axis, int at) {
        boolean wall = at == low[axis] || at == high[axis];
        return (wall ? WALL : 0) | (axis == 2 && at == low[2] ? ON_FLOOR : 0);
    }

    private static byte price(int marks) {
        if ((marks & QUARTERS) == QUARTERS) {
            return 0;
        }
        if ((marks & SHUN) != 0) {
            return Laying.SHUNNED;
        }
        boolean zone = (marks & ZONE) != 0;
        if ((marks & ON_FLOOR) != 0) {
            return (byte) (zone ? Laying.HANGING_IN_ZONE : Laying.FLOOR);
        }
        if ((marks & (QUARTERS | WALL)) != 0) {
            return (byte) (zone ? Laying.SURFACE_IN_ZONE : Laying.SURFACE);
        }
        return (byte) (zone ? Laying.HANGING_IN_ZONE : Laying.HANGING);
    }
}

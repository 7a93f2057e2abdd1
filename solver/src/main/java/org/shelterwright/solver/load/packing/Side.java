package org.shelterwright.solver.load.packing;

import java.util.Arrays;

/**
 * What stands at one side of a space, as rectangles in the plane of that side, each with its distance from the corner at
 * which blocks are put.
 */
final class Side {
    private int n;
    private int least;
    private int[] distance = new int[16];
    private int[] a0 = new int[16];
    private int[] a1 = new int[16];
    private int[] b0 = new int[16];
    private int[] b1 = new int[16];

    void clear() {
        n = 0;
        least = Integer.MAX_VALUE;
    }

    void add(int at, int fromA, int toA, int fromB, int toB) {
        if (n == distance.length) {
            distance = Arrays.copyOf(distance, 2 * n);
            a0 = Arrays.copyOf(a0, 2 * n);
            a1 = Arrays.copyOf(a1, 2 * n);
            b0 = Arrays.copyOf(b0, 2 * n);
            b1 = Arrays.copyOf(b1, 2 * n);
        }
        least = Math.min(least, at);
        distance[n] = at;
        a0[n] = fromA;
        a1[n] = toA;
        b0[n] = fromB;
        b1[n] = toB;
        n++;
    }

    boolean within(double reach) {
        return least <= reach;
    }

    /** Area in which a face that reaches from the corner to (lengthA, lengthB) is touched from within a distance. */
    double area(int lengthA, int lengthB, double reach) {
        if (least > reach) {
            return 0;
        }
        double area = 0;
        for (int i = 0; i < n; i++) {
            if (distance[i] <= reach) {
                int a = Math.min(lengthA, a1[i]) - Math.max(0, a0[i]);
                int b = Math.min(lengthB, b1[i]) - Math.max(0, b0[i]);
                if (a > 0 && b > 0) {
                    area += (double) a * b;
                }
            }
        }
        return area;
    }
}

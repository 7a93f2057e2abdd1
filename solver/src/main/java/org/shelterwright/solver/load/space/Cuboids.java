package org.shelterwright.solver.load.space;

import java.util.Arrays;

/** A growing list of cuboids, to hold pieces of spaces for a moment. */
final class Cuboids {
    static final int STRIDE = 6;
    private int[] at = new int[64 * STRIDE];
    private int n;

    void clear() {
        n = 0;
    }

    int size() {
        return n;
    }

    void add(int x0, int y0, int z0, int x1, int y1, int z1) {
        int i = n * STRIDE;
        if (i == at.length) {
            at = Arrays.copyOf(at, 2 * i);
        }
        at[i] = x0;
        at[i + 1] = y0;
        at[i + 2] = z0;
        at[i + 3] = x1;
        at[i + 4] = y1;
        at[i + 5] = z1;
        n++;
    }

    /** One of the six figures of a cuboid: x0, y0, z0, x1, y1, z1. */
    int get(int i, int figure) {
        return at[i * STRIDE + figure];
    }

    /** Takes the last one off and tells where its figures stand in {@link #get}. */
    int pop() {
        return --n;
    }

    /** Whether one holds another. */
    boolean holds(int outer, int inner) {
        int o = outer * STRIDE;
        int i = inner * STRIDE;
        return at[o] <= at[i]
                && at[o + 1] <= at[i + 1]
                && at[o + 2] <= at[i + 2]
                && at[o + 3] >= at[i + 3]
                && at[o + 4] >= at[i + 4]
                && at[o + 5] >= at[i + 5];
    }

    /** Whether another one holds one; of equal ones the first stays. */
    boolean makesNeedless(int outer, int inner) {
        return outer != inner && holds(outer, inner) && (outer < inner || !holds(inner, outer));
    }

    /** Whether any other one holds this one; of equal ones the first stays. */
    boolean held(int i) {
        for (int j = 0; j < n; j++) {
            if (makesNeedless(j, i)) {
                return true;
            }
        }
        return false;
    }
}

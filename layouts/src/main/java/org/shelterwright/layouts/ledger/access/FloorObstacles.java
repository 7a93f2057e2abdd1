package org.shelterwright.layouts.ledger.access;

import java.util.Arrays;

/**
 * What stands in the way on a floor, sorted by low edge and without what lies inside something else: in arrays that are reused. Not
 * for several threads.
 */
final class FloorObstacles {
    int[] x0 = {};
    int[] y0 = {};
    int[] x1 = {};
    int[] y1 = {};
    private int[] order = {};
    private int ordered;
    private int count;

    int count() {
        return count;
    }

    /**
     * Takes the obstacles of a floor from the origin to a corner; those that do not overlap it are left out.
     *
     * @param rects x0, y0, x1, y1 of each (µm)
     */
    void take(int[] rects, int number, int cornerX, int cornerY) {
        sort(rects, number);
        count = 0;
        for (int i = 0; i < number; i++) {
            int at = order[i];
            int left = rects[at];
            int low = rects[at + 1];
            int right = rects[at + 2];
            int high = rects[at + 3];
            if (left < cornerX && right > 0 && low < cornerY && high > 0 && !covered(left, low, right, high)) {
                x0[count] = left;
                y0[count] = low;
                x1[count] = right;
                y1[count] = high;
                count++;
            }
        }
    }

    /** Sorts where they begin by their low edge. The order of the last time is nearly right, as little moves between two floors. */
    private void sort(int[] rects, int number) {
        if (order.length < number) {
            int room = 2 * number;
            order = new int[room];
            x0 = new int[room];
            y0 = new int[room];
            x1 = new int[room];
            y1 = new int[room];
        }
        if (ordered != number) {
            for (int i = 0; i < number; i++) {
                order[i] = 4 * i;
            }
            ordered = number;
        }
        for (int i = 1; i < number; i++) {
            int at = order[i];
            int low = rects[at + 1];
            int k = i;
            while (k > 0 && rects[order[k - 1] + 1] > low) {
                order[k] = order[k - 1];
                k--;
            }
            order[k] = at;
        }
    }

    private boolean covered(int left, int low, int right, int high) {
        for (int k = 0; k < count; k++) {
            if (y1[k] >= high && x0[k] <= left && x1[k] >= right && y0[k] <= low) {
                return true;
            }
        }
        return false;
    }

    /** Whether no obstacle before this one ends at the same height. */
    boolean firstAtItsEnd(int index) {
        for (int k = 0; k < index; k++) {
            if (y1[k] == y1[index]) {
                return false;
            }
        }
        return true;
    }

    /** The numbers of the obstacles that end at a height; fills the array, which must have room, and gives their count. */
    int endingAt(int height, int[] found) {
        int many = 0;
        for (int k = 0; k < count; k++) {
            if (y1[k] == height) {
                found[many++] = k;
            }
        }
        return many;
    }

    /** Whether the obstacles are those that another has. */
    boolean same(FloorObstacles other) {
        return count == other.count
                && Arrays.equals(x0, 0, count, other.x0, 0, count)
                && Arrays.equals(y0, 0, count, other.y0, 0, count)
                && Arrays.equals(x1, 0, count, other.x1, 0, count)
                && Arrays.equals(y1, 0, count, other.y1, 0, count);
    }
}

package org.shelterwright.layouts.insight;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Box;

/**
 * The largest rectangle without a taken cell, in a grid of uneven columns and rows: row by row, the largest rectangle under the
 * outline of how far each column has been empty, with a stack. Cost: the number of cells.
 */
final class EmptyRectangle {
    private final int[] xs;
    private final int[] ys;
    private final boolean[][] taken;
    private final int[] since;
    private double most;
    private int @Nullable [] best;

    /**
     * @param xs borders of the columns, rising
     * @param ys borders of the rows, rising
     * @param taken by row and column
     */
    EmptyRectangle(int[] xs, int[] ys, boolean[][] taken) {
        this.xs = xs;
        this.ys = ys;
        this.taken = taken;
        this.since = new int[xs.length - 1];
    }

    /** The largest as a cuboid between two heights; {@code null} if every cell is taken. */
    @Nullable
    Box largest(int low, int high) {
        java.util.Arrays.fill(since, ys[0]);
        for (int j = 0; j + 1 < ys.length; j++) {
            for (int i = 0; i + 1 < xs.length; i++) {
                if (taken[j][i]) {
                    since[i] = ys[j + 1];
                }
            }
            row(ys[j + 1]);
        }
        int[] found = best;
        return found == null ? null : new Box(found[0], found[1], low, found[2], found[3], high);
    }

    /** Looks at the rectangles that end at one row. */
    private void row(int end) {
        int[] from = new int[since.length + 1];
        int[] start = new int[since.length + 1];
        int depth = 0;
        for (int i = 0; i <= since.length; i++) {
            int begin = i < since.length ? since[i] : end;
            int left = xs[i];
            while (depth > 0 && start[depth - 1] < begin) {
                depth--;
                left = from[depth];
                keep(left, start[depth], xs[i], end);
            }
            if (depth == 0 || start[depth - 1] > begin) {
                from[depth] = left;
                start[depth] = begin;
                depth++;
            }
        }
    }

    private void keep(int x0, int y0, int x1, int y1) {
        double area = (double) (x1 - x0) * (y1 - y0);
        if (area > most) {
            most = area;
            best = new int[] {x0, y0, x1, y1};
        }
    }
}

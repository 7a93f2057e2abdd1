package org.shelterwright.solver.load.block;

import java.util.ArrayList;
import java.util.List;

/** The places on a block on which something may stand. */
final class Tops {
    /** Most rectangles that a block may have; a more rugged one is not worth its time. */
    static final int MOST = 6;

    private Tops() {}

    /** The tops of two blocks beside each other, joined where they are level. */
    static int[] beside(Block a, Block b, int shiftX, int shiftY) {
        List<int[]> all = new ArrayList<>();
        add(all, a.tops(), 0, 0, 0);
        add(all, b.tops(), shiftX, shiftY, 0);
        close(all);
        return flat(all);
    }

    /** The tops of a block on another: those of the upper one, and those of the lower one that stay free whole. */
    static int[] onTop(Block lower, Block upper, int level) {
        List<int[]> all = new ArrayList<>();
        add(all, upper.tops(), 0, 0, level);
        for (int i = 0; i < lower.tops().length; i += Block.TOP) {
            int[] top = java.util.Arrays.copyOfRange(lower.tops(), i, i + Block.TOP);
            if (top[0] >= upper.dx() || top[1] >= upper.dy()) {
                all.add(top);
            }
        }
        return flat(all);
    }

    /**
     * The highest level of a block at which another can stand with its corner at the origin and its whole base on it; -1 if
     * there is none.
     */
    static int levelFor(Block lower, int dx, int dy) {
        int best = -1;
        int[] tops = lower.tops();
        for (int i = 0; i < tops.length; i += Block.TOP) {
            if (tops[i] == 0 && tops[i + 1] == 0 && tops[i + 2] >= dx && tops[i + 3] >= dy) {
                best = Math.max(best, tops[i + 4]);
            }
        }
        return best;
    }

    private static void add(List<int[]> all, int[] tops, int x, int y, int z) {
        for (int i = 0; i < tops.length; i += Block.TOP) {
            all.add(new int[] {tops[i] + x, tops[i + 1] + y, tops[i + 2] + x, tops[i + 3] + y, tops[i + 4] + z});
        }
    }

    /** Makes all largest rectangles of level places by joining two at a time. */
    private static void close(List<int[]> all) {
        boolean changed = true;
        while (changed) {
            changed = false;
            for (int i = 0; i < all.size() && !changed; i++) {
                for (int j = 0; j < all.size() && !changed; j++) {
                    int[] a = all.get(i);
                    int[] b = all.get(j);
                    if (i != j && a[4] == b[4]) {
                        changed = join(all, a, b, 0, 1) || join(all, a, b, 1, 0);
                    }
                }
            }
        }
    }

    /** Joins two along an axis where they meet; tells whether that gave something new. */
    private static boolean join(List<int[]> all, int[] a, int[] b, int along, int across) {
        if (a[along + 2] < b[along] || a[along] > b[along]) {
            return false;
        }
        int low = Math.max(a[across], b[across]);
        int high = Math.min(a[across + 2], b[across + 2]);
        if (low >= high) {
            return false;
        }
        int[] joined = new int[Block.TOP];
        joined[along] = a[along];
        joined[along + 2] = Math.max(a[along + 2], b[along + 2]);
        joined[across] = low;
        joined[across + 2] = high;
        joined[4] = a[4];
        if (all.stream().anyMatch(one -> holds(one, joined))) {
            return false;
        }
        all.removeIf(one -> holds(joined, one));
        all.add(joined);
        return true;
    }

    private static boolean holds(int[] outer, int[] inner) {
        return outer[4] == inner[4]
                && outer[0] <= inner[0]
                && outer[1] <= inner[1]
                && outer[2] >= inner[2]
                && outer[3] >= inner[3];
    }

    private static int[] flat(List<int[]> all) {
        int[] flat = new int[all.size() * Block.TOP];
        for (int i = 0; i < all.size(); i++) {
            System.arraycopy(all.get(i), 0, flat, i * Block.TOP, Block.TOP);
        }
        return flat;
    }
}

package org.shelterwright.solver.fit.model;

/** Penetration depths between flat cuboids, the same measure as {@code Box.depth}. */
final class Depths {
    private Depths() {}

    /**
     * The greatest depth between any cuboid of one list and any of another.
     *
     * @param hull the least cuboid that holds the second list
     * @param dx dy, dz shift of the second list against the first (µm)
     * @return depth (µm); zero if nothing overlaps
     */
    static int greatest(int[] a, int[] b, int[] hull, int dx, int dy, int dz) {
        int greatest = 0;
        for (int i = 0; i < a.length; i += 6) {
            boolean near = b.length == 6 || depth(a, i, hull, 0, dx, dy, dz) > 0;
            for (int j = 0; j < b.length && near; j += 6) {
                int depth = depth(a, i, b, j, dx, dy, dz);
                if (depth > greatest) {
                    greatest = depth;
                }
            }
        }
        return greatest;
    }

    static int depth(int[] a, int i, int[] b, int j, int dx, int dy, int dz) {
        int x = Math.min(a[i + 3] - b[j] - dx, b[j + 3] + dx - a[i]);
        if (x <= 0) {
            return 0;
        }
        int y = Math.min(a[i + 4] - b[j + 1] - dy, b[j + 4] + dy - a[i + 1]);
        if (y <= 0) {
            return 0;
        }
        int z = Math.min(a[i + 5] - b[j + 2] - dz, b[j + 5] + dz - a[i + 2]);
        if (z <= 0) {
            return 0;
        }
        return Math.min(x, Math.min(y, z));
    }
}

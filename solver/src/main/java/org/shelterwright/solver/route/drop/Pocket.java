package org.shelterwright.solver.route.drop;

/** What can be reached from a node of a lattice, whatever the bends. */
final class Pocket {
    /** How many nodes are looked at for a small pocket. */
    private static final int FEW = 24;

    private Pocket() {}

    /** Whether a node lies in a small pocket that leads neither to the target nor to where the part that is looked at ends. */
    static boolean sealed(Lattice lattice, int start) {
        int[] seen = new int[FEW];
        int[] indices = new int[3];
        int end = 1;
        seen[0] = start;
        for (int next = 0; next < end; next++) {
            lattice.indices(seen[next], indices);
            if (lattice.onRim(indices) || lattice.onTarget(seen[next], indices)) {
                return false;
            }
            for (int direction = 0; direction < 6; direction++) {
                if (lattice.price(seen[next], direction) != 0) {
                    int there = lattice.next(seen[next], direction);
                    int at = 0;
                    while (at < end && seen[at] != there) {
                        at++;
                    }
                    if (at == FEW) {
                        return false;
                    }
                    seen[at] = there;
                    end = Math.max(end, at + 1);
                }
            }
        }
        return true;
    }

    /** Whether a node is closed in: nothing leads from it to where the part that is looked at ends. */
    static boolean closed(Lattice lattice, int start) {
        boolean[] seen = new boolean[lattice.size()];
        int[] indices = new int[3];
        int[] queue = new int[lattice.size()];
        int end = 1;
        seen[start] = true;
        queue[0] = start;
        for (int next = 0; next < end; next++) {
            int node = queue[next];
            lattice.indices(node, indices);
            if (lattice.onRim(indices)) {
                return false;
            }
            for (int direction = 0; direction < 6; direction++) {
                int there = lattice.price(node, direction) == 0 ? node : lattice.next(node, direction);
                if (!seen[there]) {
                    seen[there] = true;
                    queue[end++] = there;
                }
            }
        }
        return true;
    }
}

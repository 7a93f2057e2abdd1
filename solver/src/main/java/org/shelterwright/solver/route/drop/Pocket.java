package org.shelterwright.solver.route.drop;

/** What can be reached from a node of a lattice, whatever the bends. */
final class Pocket {
    private Pocket() {}

    /** Whether a node is closed in: nothing leads from it to where the part that is looked at ends. */
    static boolean closed(Lattice lattice, int start) {
        boolean[] seen = new boolean[lattice.size()];
        int[] queue = new int[lattice.size()];
        int end = 1;
        seen[start] = true;
        queue[0] = start;
        for (int next = 0; next < end; next++) {
            int node = queue[next];
            if (lattice.onRim(node)) {
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

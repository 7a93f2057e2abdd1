package org.shelterwright.solver.route.tree;

import java.util.List;

/**
 * A tree that joins all terminals.
 *
 * @param edges numbers of its edges, rising
 * @param length sum of their lengths
 * @param bound no such tree is shorter
 */
public record Tree(List<Integer> edges, long length, long bound) {
    public Tree {
        edges = List.copyOf(edges);
    }

    public boolean optimal() {
        return length == bound;
    }
}

package org.shelterwright.solver.route.tree;

import java.util.ArrayList;
import java.util.List;

/**
 * A graph and the nodes that a tree must join.
 *
 * @param nodes number of nodes, counted from zero
 * @param edges each with a length of at least zero
 * @param terminals nodes to join
 */
public record TreeProblem(int nodes, List<Edge> edges, List<Integer> terminals) {
    public TreeProblem {
        edges = List.copyOf(edges);
        terminals = terminals.stream().distinct().sorted().toList();
        for (Edge edge : edges) {
            if (edge.length() < 0 || edge.a() < 0 || edge.b() < 0 || edge.a() >= nodes || edge.b() >= nodes) {
                throw new IllegalArgumentException(
                        "The edge " + edge + " does not belong to a graph of " + nodes + " nodes.");
            }
        }
    }

    /** An edge between two nodes. */
    public record Edge(int a, int b, long length) {
        int other(int node) {
            return node == a ? b : a;
        }
    }

    /** Numbers of the edges at each node. */
    int[][] incidence() {
        List<List<Integer>> lists = new ArrayList<>();
        for (int i = 0; i < nodes; i++) {
            lists.add(new ArrayList<>());
        }
        for (int i = 0; i < edges.size(); i++) {
            lists.get(edges.get(i).a()).add(i);
            if (edges.get(i).a() != edges.get(i).b()) {
                lists.get(edges.get(i).b()).add(i);
            }
        }
        return lists.stream()
                .map(list -> list.stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
    }
}

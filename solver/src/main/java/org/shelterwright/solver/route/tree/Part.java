package org.shelterwright.solver.route.tree;

import java.util.Arrays;

/** What is left of a graph in one branch of the search: nodes and edges that are alive, and nodes that must be joined. */
final class Part {
    final TreeProblem problem;
    final int[][] at;
    final boolean[] node;
    final boolean[] edge;
    final boolean[] joined;

    private Part(TreeProblem problem, int[][] at, boolean[] node, boolean[] edge, boolean[] joined) {
        this.problem = problem;
        this.at = at;
        this.node = node;
        this.edge = edge;
        this.joined = joined;
    }

    static Part whole(TreeProblem problem) {
        boolean[] node = new boolean[problem.nodes()];
        boolean[] edge = new boolean[problem.edges().size()];
        boolean[] joined = new boolean[problem.nodes()];
        Arrays.fill(node, true);
        Arrays.fill(edge, true);
        problem.terminals().forEach(terminal -> joined[terminal] = true);
        return new Part(problem, problem.incidence(), node, edge, joined);
    }

    Part copy() {
        return new Part(problem, at, node.clone(), edge.clone(), joined.clone());
    }

    long length(int number) {
        return problem.edges().get(number).length();
    }

    int other(int number, int from) {
        return problem.edges().get(number).other(from);
    }

    boolean open(int number) {
        TreeProblem.Edge one = problem.edges().get(number);
        return edge[number] && node[one.a()] && node[one.b()] && one.a() != one.b();
    }

    int degree(int of) {
        int degree = 0;
        for (int number : at[of]) {
            degree += open(number) ? 1 : 0;
        }
        return degree;
    }

    int firstJoined() {
        for (int i = 0; i < joined.length; i++) {
            if (joined[i]) {
                return i;
            }
        }
        return -1;
    }

    /** Takes out nodes that no shortest tree needs: dead ends that need not be joined. */
    void prune() {
        boolean more = true;
        while (more) {
            more = false;
            for (int i = 0; i < node.length; i++) {
                if (node[i] && !joined[i] && degree(i) <= 1) {
                    node[i] = false;
                    more = true;
                }
            }
        }
    }
}

package org.shelterwright.solver.route.tree;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Good trees: grown from one terminal by the nearest next one, then cut down to a least spanning tree without dead ends, and
 * bettered by taking single nodes in and out. Literature: Takahashi and Matsuyama (1980).
 */
final class GoodTree {
    private final Part part;

    GoodTree(Part part) {
        this.part = part;
    }

    /** Numbers of edges of the best tree found; {@code null} if the terminals are not joined. */
    @Nullable
    List<Integer> find(Reach.Length length, int starts) {
        List<Integer> best = null;
        int tried = 0;
        for (int i = 0; i < part.node.length && tried < starts; i++) {
            if (part.joined[i]) {
                tried++;
                List<Integer> grown = grow(i, length);
                if (grown != null && (best == null || sum(grown) < sum(best))) {
                    best = grown;
                }
            }
        }
        return best == null ? null : better(best);
    }

    long sum(List<Integer> edges) {
        return edges.stream().mapToLong(part::length).sum();
    }

    private @Nullable List<Integer> grow(int start, Reach.Length length) {
        boolean[] in = new boolean[part.node.length];
        in[start] = true;
        while (true) {
            Reach reach = new Reach(part, in, length);
            int next = -1;
            for (int i = 0; i < in.length; i++) {
                if (part.joined[i] && !in[i] && (next < 0 || reach.distance[i] < reach.distance[next])) {
                    next = i;
                }
            }
            if (next < 0) {
                return spanning(in);
            }
            if (reach.distance[next] == Double.POSITIVE_INFINITY) {
                return null;
            }
            for (int node = next; !in[node]; node = part.other(reach.by[node], node)) {
                in[node] = true;
            }
        }
    }

    /** Least spanning tree of some nodes without dead ends; {@code null} if they do not hang together. */
    private @Nullable List<Integer> spanning(boolean[] in) {
        int[] root = IntStream.range(0, in.length).toArray();
        List<Integer> tree = new ArrayList<>();
        List<Integer> order = IntStream.range(0, part.edge.length)
                .filter(edge -> part.open(edge)
                        && in[part.problem.edges().get(edge).a()]
                        && in[part.problem.edges().get(edge).b()])
                .boxed()
                .sorted(Comparator.comparingLong(part::length).thenComparing(edge -> edge))
                .toList();
        for (int edge : order) {
            int a = top(root, part.problem.edges().get(edge).a());
            int b = top(root, part.problem.edges().get(edge).b());
            if (a != b) {
                root[a] = b;
                tree.add(edge);
            }
        }
        int first = part.firstJoined();
        for (int i = 0; i < in.length; i++) {
            if (part.joined[i] && top(root, i) != top(root, first)) {
                return null;
            }
        }
        return trimmed(tree);
    }

    private List<Integer> trimmed(List<Integer> tree) {
        List<Integer> left = new ArrayList<>(tree);
        boolean more = true;
        while (more) {
            int[] degree = new int[part.node.length];
            for (int edge : left) {
                degree[part.problem.edges().get(edge).a()]++;
                degree[part.problem.edges().get(edge).b()]++;
            }
            more = left.removeIf(edge -> {
                int a = part.problem.edges().get(edge).a();
                int b = part.problem.edges().get(edge).b();
                return degree[a] == 1 && !part.joined[a] || degree[b] == 1 && !part.joined[b];
            });
        }
        return left;
    }

    private List<Integer> better(List<Integer> start) {
        List<Integer> best = start;
        boolean more = true;
        while (more) {
            more = false;
            boolean[] in = nodes(best);
            for (int i = 0; i < in.length; i++) {
                if (part.node[i] && !part.joined[i]) {
                    in[i] = !in[i];
                    List<Integer> changed = spanning(in);
                    if (changed != null && sum(changed) < sum(best)) {
                        best = changed;
                        in = nodes(best);
                        more = true;
                    } else {
                        in[i] = !in[i];
                    }
                }
            }
        }
        return best;
    }

    private boolean[] nodes(List<Integer> tree) {
        boolean[] in = part.joined.clone();
        for (int edge : tree) {
            in[part.problem.edges().get(edge).a()] = true;
            in[part.problem.edges().get(edge).b()] = true;
        }
        return in;
    }

    private static int top(int[] root, int node) {
        int top = node;
        while (root[top] != top) {
            root[top] = root[root[top]];
            top = root[top];
        }
        return top;
    }
}

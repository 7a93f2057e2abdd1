package org.shelterwright.solver.route.tree;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;

/**
 * A lower bound and reduced costs by dual ascent on directed cuts: while a node to join is not reached from the root over arcs
 * that cost nothing more, the cut that parts it is raised by the least arc in it. Literature: Wong (1984).
 */
final class DualAscent {
    private static final double NOTHING = 1e-9;

    private final Part part;
    final int root;
    /** Reduced costs, of edge e from its a to its b at 2e, back at 2e + 1. */
    final double[] reduced;

    double bound;
    boolean joined = true;

    DualAscent(Part part, int root) {
        this.part = part;
        this.root = root;
        int count = part.problem.edges().size();
        reduced = new double[2 * count];
        for (int i = 0; i < count; i++) {
            reduced[2 * i] = part.length(i);
            reduced[2 * i + 1] = part.length(i);
        }
        raise();
    }

    /** Reduced cost of an edge when it is gone from a node. */
    double from(int edge, int node) {
        return reduced[part.problem.edges().get(edge).a() == node ? 2 * edge : 2 * edge + 1];
    }

    private void raise() {
        List<Integer> active = new ArrayList<>();
        for (int i = 0; i < part.node.length; i++) {
            if (part.joined[i] && i != root) {
                active.add(i);
            }
        }
        while (!active.isEmpty()) {
            int best = -1;
            int least = Integer.MAX_VALUE;
            boolean[] cut = null;
            for (int k = 0; k < active.size(); k++) {
                boolean[] set = reaching(active.get(k));
                if (set[root]) {
                    active.remove(k--);
                    continue;
                }
                int size = 0;
                for (boolean in : set) {
                    size += in ? 1 : 0;
                }
                if (size < least) {
                    least = size;
                    best = k;
                    cut = set;
                }
            }
            if (best >= 0 && cut != null && !lift(cut)) {
                joined = false;
                return;
            }
        }
    }

    /** Raises a cut by its least arc; false if no arc enters it. */
    private boolean lift(boolean[] cut) {
        double least = Double.POSITIVE_INFINITY;
        for (int node = 0; node < cut.length; node++) {
            if (cut[node]) {
                for (int edge : part.at[node]) {
                    int other = part.open(edge) ? part.other(edge, node) : node;
                    if (!cut[other]) {
                        least = Math.min(least, from(edge, other));
                    }
                }
            }
        }
        if (least == Double.POSITIVE_INFINITY) {
            return false;
        }
        bound += least;
        for (int node = 0; node < cut.length; node++) {
            if (cut[node]) {
                for (int edge : part.at[node]) {
                    int other = part.open(edge) ? part.other(edge, node) : node;
                    if (!cut[other]) {
                        reduced[part.problem.edges().get(edge).a() == other ? 2 * edge : 2 * edge + 1] -= least;
                    }
                }
            }
        }
        return true;
    }

    /** The nodes from which a node is reached over arcs that cost nothing more. */
    private boolean[] reaching(int end) {
        boolean[] set = new boolean[part.node.length];
        Deque<Integer> stack = new ArrayDeque<>();
        set[end] = true;
        stack.push(end);
        while (!stack.isEmpty()) {
            int node = stack.pop();
            for (int edge : part.at[node]) {
                if (part.open(edge)) {
                    int other = part.other(edge, node);
                    if (!set[other] && from(edge, other) <= NOTHING) {
                        set[other] = true;
                        stack.push(other);
                    }
                }
            }
        }
        return set;
    }

    /**
     * Takes out nodes and edges that no tree shorter than a known one needs.
     *
     * @param known length of the known tree
     * @return whether anything went out
     */
    boolean fix(double known) {
        boolean[] start = new boolean[part.node.length];
        start[root] = true;
        boolean[] ends = part.joined.clone();
        ends[root] = false;
        Reach down = new Reach(part, start, this::from);
        Reach up = new Reach(part, ends, (edge, node) -> from(edge, part.other(edge, node)));
        boolean any = false;
        double limit = known - 1 + 1e-6;
        for (int i = 0; i < part.node.length; i++) {
            if (part.node[i] && !part.joined[i] && bound + down.distance[i] + up.distance[i] > limit) {
                part.node[i] = false;
                any = true;
            }
        }
        for (int edge = 0; edge < part.edge.length; edge++) {
            if (part.open(edge)) {
                TreeProblem.Edge one = part.problem.edges().get(edge);
                double forth = down.distance[one.a()] + from(edge, one.a()) + up.distance[one.b()];
                double back = down.distance[one.b()] + from(edge, one.b()) + up.distance[one.a()];
                if (bound + Math.min(forth, back) > limit) {
                    part.edge[edge] = false;
                    any = true;
                }
            }
        }
        return any;
    }
}

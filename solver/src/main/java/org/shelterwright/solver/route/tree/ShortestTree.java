package org.shelterwright.solver.route.tree;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Finds the shortest tree by branch and bound: dual ascent from several roots bounds and thins out each part, good trees are
 * grown in it, and a node that is still in doubt is joined in one branch and taken out in the other. Exact unless its budget of
 * branches ends it; then the bound tells how far off it may be. Lengths are whole numbers. Deterministic.
 */
public final class ShortestTree {
    private static final int ROOTS = 6;
    private static final int STARTS = 12;

    private final TreeProblem problem;
    private final int most;
    private List<Integer> best = List.of();
    private long known = Long.MAX_VALUE / 4;
    private long open = Long.MAX_VALUE / 4;
    private int branches;

    private ShortestTree(TreeProblem problem, int most) {
        this.problem = problem;
        this.most = most;
    }

    /**
     * Finds a tree.
     *
     * @param branches how many parts may be looked at
     * @return empty if the terminals are not joined by the graph
     */
    public static Optional<Tree> find(TreeProblem problem, int branches) {
        if (problem.terminals().size() < 2) {
            return Optional.of(new Tree(List.of(), 0, 0));
        }
        ShortestTree search = new ShortestTree(problem, branches);
        search.look(Part.whole(problem), 0);
        if (search.known > Long.MAX_VALUE / 8) {
            return Optional.empty();
        }
        List<Integer> edges = search.best.stream().sorted().toList();
        return Optional.of(new Tree(edges, search.known, Math.min(search.known, search.open)));
    }

    /** Looks through a part; notes the least bound of what it leaves unseen. */
    private void look(Part part, double inherited) {
        if (branches++ >= most) {
            open = Math.min(open, (long) Math.ceil(inherited - 1e-6));
            return;
        }
        double bound = inherited;
        boolean again = true;
        for (int pass = 0; again && pass < 8; pass++) {
            again = false;
            part.prune();
            for (int root : roots(part, pass)) {
                DualAscent ascent = new DualAscent(part, root);
                if (!ascent.joined) {
                    return;
                }
                bound = Math.max(bound, ascent.bound);
                offer(new GoodTree(part).find((edge, node) -> ascent.from(edge, node) + 1e-6 * part.length(edge), 4));
                if (pass == 0) {
                    offer(new GoodTree(part).find((edge, node) -> part.length(edge), branches == 1 ? STARTS : 2));
                }
                if (Math.ceil(bound - 1e-6) >= known) {
                    return;
                }
                again |= ascent.fix(known);
                part.prune();
            }
        }
        int node = inDoubt(part);
        if (node < 0) {
            return;
        }
        Part with = part.copy();
        with.joined[node] = true;
        look(with, bound);
        Part without = part.copy();
        without.node[node] = false;
        look(without, bound);
    }

    private List<Integer> roots(Part part, int pass) {
        List<Integer> joined = new ArrayList<>();
        for (int i = 0; i < part.node.length; i++) {
            if (part.joined[i]) {
                joined.add(i);
            }
        }
        List<Integer> roots = new ArrayList<>();
        int count = Math.min(pass == 0 ? ROOTS : 2, joined.size());
        for (int k = 0; k < count; k++) {
            roots.add(joined.get((k * joined.size() / count + pass) % joined.size()));
        }
        return roots;
    }

    private void offer(@Nullable List<Integer> tree) {
        if (tree != null) {
            long length = tree.stream()
                    .mapToLong(edge -> problem.edges().get(edge).length())
                    .sum();
            if (length < known) {
                known = length;
                best = tree;
            }
        }
    }

    /** The node that need not be joined with most edges; -1 if there is none. */
    private static int inDoubt(Part part) {
        int best = -1;
        int most = 0;
        for (int i = 0; i < part.node.length; i++) {
            if (part.node[i] && !part.joined[i] && part.degree(i) > most) {
                most = part.degree(i);
                best = i;
            }
        }
        return best;
    }
}

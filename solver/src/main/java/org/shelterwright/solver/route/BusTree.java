package org.shelterwright.solver.route;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.shelterwright.solver.route.net.Link;
import org.shelterwright.solver.route.net.Network;
import org.shelterwright.solver.route.net.Strand;
import org.shelterwright.solver.route.tree.ShortestTree;
import org.shelterwright.solver.route.tree.Tree;
import org.shelterwright.solver.route.tree.TreeProblem;

/**
 * The wires of a bus as a shortest tree: a wire with one end at what is laid takes the way from its other end to where it meets
 * that; any other takes its whole way in the tree.
 */
final class BusTree {
    private static final int BRANCHES = 400;

    private final Network network;
    private final Map<Ask, Way> ways = new LinkedHashMap<>();
    private final Map<Integer, List<Integer>> inTree = new HashMap<>();
    private long cost;
    private long bound;

    /** A wire of the bus with its nodes. */
    record Branch(Ask ask, int from, int to) {}

    /** A way from a node on. */
    record Way(int from, int[] links) {}

    BusTree(Network network, List<Branch> branches) {
        this.network = network;
        List<Integer> numbers = new ArrayList<>();
        List<TreeProblem.Edge> edges = new ArrayList<>();
        Strand strand = strand(branches.get(0));
        for (int i = 0; i < network.links().size(); i++) {
            Link link = network.link(i);
            if (link.admits(strand)) {
                numbers.add(i);
                edges.add(new TreeProblem.Edge(link.a(), link.b(), link.cost()));
            }
        }
        List<Integer> terminals = new ArrayList<>();
        branches.forEach(branch -> {
            terminals.add(branch.from());
            terminals.add(branch.to());
        });
        Tree tree = ShortestTree.find(new TreeProblem(network.size(), edges, terminals), BRANCHES)
                .orElse(null);
        if (tree != null) {
            cost = tree.length();
            bound = tree.bound();
            tree.edges().forEach(edge -> {
                Link link = network.link(numbers.get(edge));
                inTree.computeIfAbsent(link.a(), key -> new ArrayList<>()).add(numbers.get(edge));
                inTree.computeIfAbsent(link.b(), key -> new ArrayList<>()).add(numbers.get(edge));
            });
            lay(branches);
        }
    }

    Map<Ask, Way> ways() {
        return ways;
    }

    long cost() {
        return cost;
    }

    long bound() {
        return bound;
    }

    private static Strand strand(Branch branch) {
        Ask ask = branch.ask();
        return new Strand(branch.from(), branch.to(), ask.size(), ask.classBit(), ask.owner());
    }

    private void lay(List<Branch> branches) {
        Set<Integer> laid = new HashSet<>();
        for (Branch branch : branches) {
            boolean fromLaid = laid.contains(branch.from());
            boolean toLaid = laid.contains(branch.to());
            Set<Integer> goal = fromLaid == toLaid ? Set.of(branch.to()) : laid;
            int start = fromLaid && !toLaid ? branch.to() : branch.from();
            int[] links = path(start, goal);
            if (links == null) {
                continue;
            }
            int node = start;
            laid.add(node);
            for (int link : links) {
                node = network.link(link).other(node);
                laid.add(node);
            }
            ways.put(branch.ask(), start == branch.from() ? new Way(start, links) : reversed(node, links));
        }
    }

    private static Way reversed(int from, int[] links) {
        int[] back = new int[links.length];
        for (int i = 0; i < links.length; i++) {
            back[i] = links[links.length - 1 - i];
        }
        return new Way(from, back);
    }

    private int @Nullable [] path(int start, Set<Integer> goal) {
        Map<Integer, Integer> by = new HashMap<>();
        Deque<Integer> queue = new ArrayDeque<>(List.of(start));
        by.put(start, -1);
        while (!queue.isEmpty()) {
            int node = queue.poll();
            if (goal.contains(node)) {
                List<Integer> links = new ArrayList<>();
                for (int at = node;
                        at != start;
                        at = network.link(by.getOrDefault(at, -1)).other(at)) {
                    links.add(0, by.getOrDefault(at, -1));
                }
                return links.stream().mapToInt(Integer::intValue).toArray();
            }
            for (int link : inTree.getOrDefault(node, List.of())) {
                int next = network.link(link).other(node);
                if (by.putIfAbsent(next, link) == null) {
                    queue.add(next);
                }
            }
        }
        return null;
    }
}

package org.shelterwright.solver.route.net;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Nodes and links. Nodes marked as ends are passed by no strand but those that begin or end there. Immutable. */
public final class Network {
    private final int size;
    private final List<Link> links;
    private final boolean[] ends;
    private final int[][] at;

    /** @param ends nodes that only their own strands may touch */
    public Network(int size, List<Link> links, List<Integer> ends) {
        this.size = size;
        this.links = List.copyOf(links);
        this.ends = new boolean[size];
        ends.forEach(node -> this.ends[node] = true);
        List<List<Integer>> lists = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            lists.add(new ArrayList<>());
        }
        for (int i = 0; i < links.size(); i++) {
            lists.get(links.get(i).a()).add(i);
            lists.get(links.get(i).b()).add(i);
        }
        at = lists.stream()
                .map(list -> list.stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
    }

    public int size() {
        return size;
    }

    public List<Link> links() {
        return links;
    }

    public Link link(int number) {
        return links.get(number);
    }

    /** Numbers of the links at a node. */
    int[] at(int node) {
        return at[node];
    }

    boolean isEnd(int node) {
        return ends[node];
    }

    /** The same with less capacity, as if something lay there already; never below zero. */
    public Network without(long[] taken) {
        List<Link> left = new ArrayList<>();
        for (int i = 0; i < links.size(); i++) {
            Link link = links.get(i);
            long capacity = link.capacity() >= Link.FREE ? Link.FREE : Math.max(0, link.capacity() - taken[i]);
            left.add(new Link(link.a(), link.b(), link.cost(), capacity, link.counted(), link.classes(), link.owner()));
        }
        List<Integer> marked = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            if (ends[i]) {
                marked.add(i);
            }
        }
        return new Network(size, left, marked);
    }

    @Override
    public String toString() {
        return size + " nodes, " + links.size() + " links, ends " + Arrays.toString(ends);
    }
}

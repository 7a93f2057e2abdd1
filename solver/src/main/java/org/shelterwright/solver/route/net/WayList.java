package org.shelterwright.solver.route.net;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.function.Predicate;

/**
 * All simple ways of one strand that a price admits, the cheapest first: best-first search over beginnings of ways with the
 * distance that is left as estimate. The number of ways grows fast; take only as many as needed.
 */
final class WayList {
    private static final int MOST = 200;

    private final Network network;
    private final Strand strand;
    private final ShortestWay.Price price;

    private record Begun(int node, double cost, double estimate, List<Integer> links, int number) {}

    WayList(Network network, Strand strand, ShortestWay.Price price) {
        this.network = network;
        this.strand = strand;
        this.price = price;
    }

    /** Offers ways until one is taken. */
    boolean each(Predicate<int[]> taker) {
        double[] left = distances();
        PriorityQueue<Begun> queue =
                new PriorityQueue<>(Comparator.comparingDouble(Begun::estimate).thenComparingInt(Begun::number));
        int count = 0;
        int offered = 0;
        queue.add(new Begun(strand.from(), 0, left[strand.from()], List.of(), count++));
        while (!queue.isEmpty() && offered < MOST && count < 100 * MOST) {
            Begun begun = queue.poll();
            if (begun.node() == strand.to()) {
                offered++;
                if (taker.test(
                        begun.links().stream().mapToInt(Integer::intValue).toArray())) {
                    return true;
                }
                continue;
            }
            for (int number : network.at(begun.node())) {
                Link link = network.link(number);
                int next = link.other(begun.node());
                double cost = link.admits(strand) ? price.of(number, link, strand) : -1;
                boolean through = next == strand.to() || !network.isEnd(next);
                if (cost >= 0 && through && left[next] < Double.POSITIVE_INFINITY && !visits(begun, next)) {
                    List<Integer> links = new ArrayList<>(begun.links());
                    links.add(number);
                    double sum = begun.cost() + cost;
                    queue.add(new Begun(next, sum, sum + left[next], links, count++));
                }
            }
        }
        return false;
    }

    private boolean visits(Begun begun, int node) {
        int at = strand.from();
        if (at == node) {
            return true;
        }
        for (int number : begun.links()) {
            at = network.link(number).other(at);
            if (at == node) {
                return true;
            }
        }
        return false;
    }

    /** Bellman and Ford's distances to the end. */
    private double[] distances() {
        double[] left = new double[network.size()];
        Arrays.fill(left, Double.POSITIVE_INFINITY);
        left[strand.to()] = 0;
        boolean more = true;
        while (more) {
            more = false;
            for (int number = 0; number < network.links().size(); number++) {
                Link link = network.link(number);
                double cost = link.admits(strand) ? price.of(number, link, strand) : -1;
                if (cost >= 0) {
                    if (left[link.a()] + cost < left[link.b()]) {
                        left[link.b()] = left[link.a()] + cost;
                        more = true;
                    }
                    if (left[link.b()] + cost < left[link.a()]) {
                        left[link.a()] = left[link.b()] + cost;
                        more = true;
                    }
                }
            }
        }
        return left;
    }
}

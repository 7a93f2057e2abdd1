package org.shelterwright.solver.route.net;

import java.util.Arrays;
import java.util.PriorityQueue;
import org.jspecify.annotations.Nullable;

/**
 * Dijkstra's shortest ways through a network under prices that change. Ties go to the lower node number, so that equal questions
 * have equal answers. Cost: O(m log n) each. Not for several threads.
 */
final class ShortestWay {
    private final Network network;
    private final double[] distance;
    private final int[] by;
    private final boolean[] settled;

    /** What a link costs a strand; infinite: it may not pass. */
    interface Price {
        double of(int link, Link of, Strand strand);
    }

    private record Entry(double distance, int node) implements Comparable<Entry> {
        @Override
        public int compareTo(Entry o) {
            int order = Double.compare(distance, o.distance);
            return order != 0 ? order : Integer.compare(node, o.node);
        }
    }

    ShortestWay(Network network) {
        this.network = network;
        this.distance = new double[network.size()];
        this.by = new int[network.size()];
        this.settled = new boolean[network.size()];
    }

    /** The links of a cheapest way from its beginning to its end; {@code null} if there is none. */
    int @Nullable [] find(Strand strand, Price price) {
        Arrays.fill(distance, Double.POSITIVE_INFINITY);
        Arrays.fill(by, -1);
        Arrays.fill(settled, false);
        PriorityQueue<Entry> queue = new PriorityQueue<>();
        distance[strand.from()] = 0;
        queue.add(new Entry(0, strand.from()));
        while (!queue.isEmpty()) {
            int node = queue.poll().node();
            if (settled[node]) {
                continue;
            }
            settled[node] = true;
            if (node == strand.to()) {
                return way(strand);
            }
            if (network.isEnd(node) && node != strand.from()) {
                continue;
            }
            for (int number : network.at(node)) {
                Link link = network.link(number);
                int next = link.other(node);
                double cost = link.admits(strand) && !settled[next] ? price.of(number, link, strand) : -1;
                if (cost >= 0 && distance[node] + cost < distance[next]) {
                    distance[next] = distance[node] + cost;
                    by[next] = number;
                    queue.add(new Entry(distance[next], next));
                }
            }
        }
        return null;
    }

    /** The cost of the way that was found last. */
    double cost(Strand strand) {
        return distance[strand.to()];
    }

    private int[] way(Strand strand) {
        int count = 0;
        for (int node = strand.to();
                node != strand.from();
                node = network.link(by[node]).other(node)) {
            count++;
        }
        int[] way = new int[count];
        for (int node = strand.to();
                node != strand.from();
                node = network.link(by[node]).other(node)) {
            way[--count] = by[node];
        }
        return way;
    }
}

package org.shelterwright.solver.route.net;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Depth-first search over all ways of all strands within the capacities, the largest strands first, each by its cheapest ways
 * first; it ends at the first set that fits, or when its budget of nodes is used up. For small cases that negotiation leaves
 * open.
 */
final class ExactWays {
    private final Network network;
    private final List<Strand> strands;
    private final Load load;
    private final List<int @Nullable []> ways = new ArrayList<>();
    private final List<Integer> order;
    private long left;

    ExactWays(Network network, List<Strand> strands, long nodes) {
        this.network = network;
        this.strands = strands;
        this.load = new Load(network);
        this.left = nodes;
        strands.forEach(strand -> ways.add(null));
        this.order = IntStream.range(0, strands.size())
                .boxed()
                .sorted(Comparator.comparing((Integer i) -> -strands.get(i).size())
                        .thenComparing(i -> i))
                .toList();
    }

    /** Ways that fit; {@code null} if none were found. */
    @Nullable
    List<int @Nullable []> solve() {
        return place(0) ? ways : null;
    }

    private boolean place(int depth) {
        if (depth == order.size()) {
            return true;
        }
        int index = order.get(depth);
        Strand strand = strands.get(index);
        ShortestWay search = new ShortestWay(network);
        if (search.find(strand, (number, link, one) -> link.cost()) == null) {
            return place(depth + 1);
        }
        for (int later = depth; later < order.size(); later++) {
            Strand other = strands.get(order.get(later));
            boolean any = search.find(other, (number, link, one) -> link.cost()) != null;
            if (any && search.find(other, this::room) == null) {
                return false;
            }
        }
        return new WayList(network, strand, this::room).each(way -> {
            if (left-- <= 0) {
                return false;
            }
            load.put(strand, way);
            ways.set(index, way);
            if (place(depth + 1)) {
                return true;
            }
            load.take(strand, way);
            ways.set(index, null);
            return false;
        });
    }

    private double room(int number, Link link, Strand strand) {
        return left <= 0 || load.over(number, link, strand) > 0 ? -1 : link.cost();
    }
}

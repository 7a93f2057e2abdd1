package org.shelterwright.solver.route.net;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Depth-first branch and bound over all ways of all strands within the capacities, the largest strands first, each by its
 * cheapest ways first. A branch ends where what is laid and the cheapest ways for the rest, each alone in the room that is left,
 * come to no less than the best so far. Its budget of nodes may end it early. For the few strands that contend.
 */
final class ExactWays {
    private final Network network;
    private final List<Strand> strands;
    private final Load load;
    private final ShortestWay search;
    private final List<int @Nullable []> ways = new ArrayList<>();
    private final List<Integer> order;
    private @Nullable List<int @Nullable []> best;
    private long bestCost;
    private long left;

    /**
     * Prepares a search.
     *
     * @param load what lies there of other strands
     * @param known cost that must be undercut
     * @param nodes budget
     */
    ExactWays(Network network, List<Strand> strands, Load load, long known, long nodes) {
        this.network = network;
        this.strands = strands;
        this.load = load;
        this.search = new ShortestWay(network);
        this.bestCost = known;
        this.left = nodes;
        strands.forEach(strand -> ways.add(null));
        this.order = IntStream.range(0, strands.size())
                .boxed()
                .sorted(Comparator.comparing((Integer i) -> -strands.get(i).size())
                        .thenComparing(i -> i))
                .toList();
    }

    /** Cheaper ways for all strands that have one; {@code null} if none were found. The load is as it was before. */
    @Nullable
    List<int @Nullable []> solve() {
        place(0, 0);
        return best;
    }

    private void place(int depth, long cost) {
        if (depth == order.size()) {
            best = new ArrayList<>(ways);
            bestCost = cost;
            return;
        }
        if (left-- <= 0 || cost + rest(depth) >= bestCost) {
            return;
        }
        int index = order.get(depth);
        Strand strand = strands.get(index);
        new WayList(network, strand, this::room).each(way -> {
            long sum = cost;
            for (int number : way) {
                sum += network.link(number).cost();
            }
            if (sum >= bestCost || left <= 0) {
                return true;
            }
            load.put(strand, way);
            ways.set(index, way);
            place(depth + 1, sum);
            load.take(strand, way);
            ways.set(index, null);
            return false;
        });
    }

    /** What the strands from a depth on cost at least in the room that is left. */
    private long rest(int depth) {
        long sum = 0;
        for (int i = depth; i < order.size(); i++) {
            Strand strand = strands.get(order.get(i));
            if (search.find(strand, this::room) == null) {
                return Long.MAX_VALUE / 4;
            }
            sum += Math.round(search.cost(strand));
        }
        return sum;
    }

    private double room(int number, Link link, Strand strand) {
        return load.over(number, link, strand) > 0 ? -1 : link.cost();
    }
}

package org.shelterwright.solver.route.net;

import java.util.List;

/**
 * A lower bound on the cost of ways within the capacities: with a price λ on each link, {@code Σ min (c + λ s) − Σ λ C} is one
 * for any λ ≥ 0, and subgradient steps make it large. Literature: Held, Wolfe and Crowder (1974); Ahuja, Magnanti and Orlin,
 * Network Flows, ch. 16 (from memory).
 */
final class LagrangeBound {
    private static final int STEPS = 60;

    private final Network network;
    private final List<Strand> strands;

    LagrangeBound(Network network, List<Strand> strands) {
        this.network = network;
        this.strands = strands;
    }

    /**
     * Gives a bound, rounded up to a whole cost where that is safe.
     *
     * @param aim a cost that the bound will not pass by much
     */
    long bound(long aim) {
        int count = network.links().size();
        double[] lambda = new double[count];
        double best = Double.NEGATIVE_INFINITY;
        double scale = 1;
        int idle = 0;
        ShortestWay search = new ShortestWay(network);
        for (int step = 0; step < STEPS; step++) {
            Load load = new Load(network);
            double value = 0;
            for (Strand strand : strands) {
                int[] way =
                        search.find(strand, (number, link, one) -> link.cost() + lambda[number] * link.takenBy(one));
                if (way != null) {
                    value += search.cost(strand);
                    load.put(strand, way);
                }
            }
            double square = 0;
            for (int i = 0; i < count; i++) {
                Link link = network.link(i);
                if (link.capacity() < Link.FREE) {
                    value -= lambda[i] * link.capacity();
                    double slope = load.taken[i] - link.capacity();
                    square += slope > 0 || lambda[i] > 0 ? slope * slope : 0;
                }
            }
            idle = value > best + 1e-9 ? 0 : idle + 1;
            best = Math.max(best, value);
            if (square == 0) {
                break;
            }
            if (idle >= 5) {
                scale /= 2;
                idle = 0;
            }
            double length = scale * Math.max(1, aim - value) / square;
            for (int i = 0; i < count; i++) {
                Link link = network.link(i);
                if (link.capacity() < Link.FREE) {
                    lambda[i] = Math.max(0, lambda[i] + length * (load.taken[i] - link.capacity()));
                }
            }
        }
        return (long) Math.ceil(best - 1e-6 * Math.max(1, Math.abs(best)));
    }
}

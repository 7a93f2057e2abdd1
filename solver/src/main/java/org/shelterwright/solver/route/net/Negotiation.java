package org.shelterwright.solver.route.net;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Finds ways for all strands together by negotiated congestion: each takes its cheapest way, overfull links grow dearer for the
 * strands in them and in memory, and all are laid again until none is overfull. Then each strand, and each two, are laid again
 * within what is left, as long as that saves. Where few strands contend, an exact search ({@link ExactWays}) has the last word.
 * Literature: McMurchie and Ebeling, PathFinder (1995). Deterministic.
 */
public final class Negotiation {
    private static final int ROUNDS = 80;
    private static final int PAIRS = 4_000;
    private static final long NODES = 20_000;
    private static final int MOST_EXACT = 12;

    private final Network network;
    private final List<Strand> strands;
    private final ShortestWay search;
    private final List<int @Nullable []> ways = new ArrayList<>();
    private final double[] memory;
    private final Load load;

    private Negotiation(Network network, List<Strand> strands) {
        this.network = network;
        this.strands = strands;
        this.search = new ShortestWay(network);
        this.memory = new double[network.links().size()];
        this.load = new Load(network);
    }

    /** Finds ways for all strands; those that no way joins have none. */
    public static Ways solve(Network network, List<Strand> strands) {
        return new Negotiation(network, strands).run();
    }

    private Ways run() {
        long alone = 0;
        for (Strand strand : strands) {
            int[] way = search.find(strand, (number, link, one) -> link.cost());
            ways.add(way);
            load.put(strand, way);
            alone += way == null ? 0 : cost(way);
        }
        if (load.within()) {
            return new Ways(ways, alone, alone, true, 0);
        }
        int rounds = negotiate();
        if (!load.within()) {
            exactly(Long.MAX_VALUE / 8);
        }
        if (load.within()) {
            improve();
        }
        long bound = Math.max(alone, new LagrangeBound(network, strands).bound(load.within() ? cost() : 2 * cost()));
        if (load.within() && cost() > bound) {
            exactly(cost());
        }
        long cost = cost();
        return new Ways(ways, cost, load.within() ? Math.min(bound, cost) : bound, load.within(), rounds);
    }

    private long cost() {
        long cost = 0;
        for (int[] way : ways) {
            cost += way == null ? 0 : cost(way);
        }
        return cost;
    }

    private int negotiate() {
        double pressure = 0.5;
        for (int round = 1; round <= ROUNDS; round++) {
            double now = pressure;
            for (int i = 0; i < strands.size(); i++) {
                Strand strand = strands.get(i);
                load.take(strand, ways.get(i));
                ways.set(i, search.find(strand, (number, link, one) -> price(number, link, one, now)));
                load.put(strand, ways.get(i));
            }
            if (load.within()) {
                return round;
            }
            for (int i = 0; i < memory.length; i++) {
                Link link = network.link(i);
                if (load.taken[i] > link.capacity()) {
                    memory[i] += (load.taken[i] - link.capacity()) / (double) Math.max(1, link.capacity());
                }
            }
            pressure = Math.min(pressure * 1.3, 1e4);
        }
        return ROUNDS;
    }

    private double price(int number, Link link, Strand strand, double pressure) {
        long over = load.over(number, link, strand);
        double share = over / (double) Math.max(1, link.capacity());
        return (link.cost() + 1) * (1 + memory[number]) * (1 + pressure * share) + (over > 0 ? pressure : 0);
    }

    /** Price within what is left: infinite where there is no room. */
    private double room(int number, Link link, Strand strand) {
        return load.over(number, link, strand) > 0 ? -1 : link.cost();
    }

    private void improve() {
        boolean better = true;
        int pairs = PAIRS;
        while (better) {
            better = false;
            for (int i = 0; i < strands.size(); i++) {
                better |= relay(List.of(i));
            }
            List<Integer> detours = detours();
            for (int a = 0; a < detours.size() && !better; a++) {
                for (int i = 0; i < strands.size() && !better && pairs > 0; i++) {
                    if (i != detours.get(a)) {
                        pairs--;
                        better = relay(List.of(detours.get(a), i)) || relay(List.of(i, detours.get(a)));
                    }
                }
            }
        }
    }

    /** Strands that go farther than they would alone, the farthest first. */
    private List<Integer> detours() {
        long[] extra = new long[strands.size()];
        for (int i = 0; i < extra.length; i++) {
            int[] way = ways.get(i);
            int[] alone = search.find(strands.get(i), (number, link, one) -> link.cost());
            extra[i] = way == null || alone == null ? 0 : cost(way) - cost(alone);
        }
        return IntStream.range(0, extra.length)
                .boxed()
                .filter(i -> extra[i] > 0)
                .sorted(Comparator.comparing((Integer i) -> -extra[i]).thenComparing(i -> i))
                .toList();
    }

    /** Lays some strands again, one after another within what is left; keeps that if it saves. */
    private boolean relay(List<Integer> which) {
        List<int @Nullable []> old = new ArrayList<>();
        long before = 0;
        for (int i : which) {
            int[] way = ways.get(i);
            if (way == null) {
                return false;
            }
            old.add(way);
            before += cost(way);
        }
        for (int i : which) {
            load.take(strands.get(i), ways.get(i));
        }
        long after = 0;
        List<int @Nullable []> made = new ArrayList<>();
        for (int i : which) {
            int[] way = search.find(strands.get(i), this::room);
            made.add(way);
            load.put(strands.get(i), way);
            after += way == null ? Long.MAX_VALUE / 4 : cost(way);
        }
        boolean saves = after < before;
        for (int k = 0; k < which.size(); k++) {
            int i = which.get(k);
            if (!saves) {
                load.take(strands.get(i), made.get(k));
                load.put(strands.get(i), old.get(k));
            } else {
                ways.set(i, made.get(k));
            }
        }
        return saves;
    }

    /** Lays the strands that contend exactly, if they are few and that undercuts a cost of all; the others stay. */
    private void exactly(long known) {
        List<Integer> contending = contending();
        if (contending.size() > MOST_EXACT) {
            return;
        }
        List<Strand> few = contending.stream().map(strands::get).toList();
        long ofOthers = 0;
        for (int i = 0; i < strands.size(); i++) {
            int[] way = ways.get(i);
            ofOthers += contending.contains(i) || way == null ? 0 : cost(way);
        }
        contending.forEach(i -> load.take(strands.get(i), ways.get(i)));
        List<int @Nullable []> found = new ExactWays(network, few, load, known - ofOthers, NODES).solve();
        for (int k = 0; k < few.size(); k++) {
            int i = contending.get(k);
            ways.set(i, found == null ? ways.get(i) : found.get(k));
            load.put(strands.get(i), ways.get(i));
        }
    }

    /** Strands that have a way, all if they are few; else those that touch a link that is nearly full. */
    private List<Integer> contending() {
        List<Integer> routed = IntStream.range(0, strands.size())
                .filter(i -> ways.get(i) != null)
                .boxed()
                .toList();
        if (routed.size() <= MOST_EXACT) {
            return routed;
        }
        List<Integer> touching = new ArrayList<>();
        for (int i : routed) {
            int[] alone = search.find(strands.get(i), (number, link, one) -> link.cost());
            boolean full = false;
            for (int number : alone == null ? new int[0] : alone) {
                full |= load.taken[number] + network.link(number).takenBy(strands.get(i))
                        > network.link(number).capacity();
            }
            if (full) {
                touching.add(i);
            }
        }
        return touching;
    }

    private long cost(int[] way) {
        long sum = 0;
        for (int number : way) {
            sum += network.link(number).cost();
        }
        return sum;
    }
}

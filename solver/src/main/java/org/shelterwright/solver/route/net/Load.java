package org.shelterwright.solver.route.net;

import org.jspecify.annotations.Nullable;

/** What lies in each link. Not for several threads. */
final class Load {
    private final Network network;
    final long[] taken;

    Load(Network network) {
        this.network = network;
        this.taken = new long[network.links().size()];
    }

    void put(Strand strand, int @Nullable [] way) {
        change(strand, way, 1);
    }

    void take(Strand strand, int @Nullable [] way) {
        change(strand, way, -1);
    }

    private void change(Strand strand, int @Nullable [] way, int sign) {
        if (way != null) {
            for (int number : way) {
                taken[number] += sign * network.link(number).takenBy(strand);
            }
        }
    }

    /** By how much a link would be overfull with a strand more; zero if it would not. */
    long over(int number, Link link, Strand strand) {
        return Math.max(0, taken[number] + link.takenBy(strand) - link.capacity());
    }

    boolean within() {
        for (int i = 0; i < taken.length; i++) {
            if (taken[i] > network.link(i).capacity()) {
                return false;
            }
        }
        return true;
    }
}

package org.shelterwright.solver.route.net;

/**
 * A link of a network, open both ways.
 *
 * @param a one node
 * @param b the other
 * @param cost at least zero
 * @param capacity sum of what the strands through it may take
 * @param counted whether every strand takes one, whatever its size
 * @param classes bit set of classes that may pass
 * @param owner the only owner whose strands may pass; {@link #ANY}: all
 */
public record Link(int a, int b, long cost, long capacity, boolean counted, int classes, int owner) {
    /** Open to all strands. */
    public static final int ANY = -1;

    /** A capacity that nothing exhausts. */
    public static final long FREE = Long.MAX_VALUE / 4;

    public Link {
        if (cost < 0 || capacity < 0) {
            throw new IllegalArgumentException(
                    "A link must not have a cost of " + cost + " or a capacity of " + capacity);
        }
    }

    public long takenBy(Strand strand) {
        return counted ? 1 : strand.size();
    }

    public boolean admits(Strand strand) {
        return (classes & strand.classBit()) != 0 && (owner == ANY || owner == strand.owner());
    }

    public int other(int node) {
        return node == a ? b : a;
    }
}

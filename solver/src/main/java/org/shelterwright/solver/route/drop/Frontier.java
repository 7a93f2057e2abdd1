package org.shelterwright.solver.route.drop;

import java.util.Arrays;

/**
 * The labels of a search in flat arrays, by place and direction, and the queue of those still to be looked at: the least estimate
 * first; of equals the one farthest on, then the first made. Of labels with the same place and direction, one that needs no more
 * straight and costs no more makes another useless. Used again from search to search. Not for several threads.
 */
final class Frontier {
    private static final int FIRST = 1 << 10;

    /** Six, and none at the start; one is not used. */
    private static final int DIRECTION_BITS = 3;

    int[] node = new int[FIRST];
    int[] direction = new int[FIRST];
    int[] need = new int[FIRST];
    int[] before = new int[FIRST];
    long[] cost = new long[FIRST];
    private int[] sibling = new int[FIRST];
    private boolean[] useless = new boolean[FIRST];
    private int[] heap = new int[FIRST];

    /** Estimates of the labels in the queue, beside them. */
    private long[] keys = new long[FIRST];

    /** By place and direction: the number of the last search that came there, and below it the label that it made last. */
    private long[] newest = new long[0];

    private int search;
    private int waiting;
    private int count;
    private int taken;

    /** Begins a search over places numbered below a size. */
    void begin(int places) {
        if (newest.length < places << DIRECTION_BITS) {
            newest = new long[places << DIRECTION_BITS];
            search = 0;
        }
        search++;
        waiting = 0;
        count = 0;
        taken = 0;
    }

    /** How many labels were taken out of the queue. */
    int taken() {
        return taken;
    }

    /** Whether another label was found since that makes one useless. */
    boolean useless(int label) {
        return useless[label];
    }

    /** The label that this search made last for a place and direction; -1 if none. */
    private int newest(int slot) {
        return newest[slot] >> 32 == search ? (int) newest[slot] : -1;
    }

    boolean isEmpty() {
        return waiting == 0;
    }

    /**
     * Makes a label, unless a known one makes it useless; it makes useless what costs more and needs as much straight.
     *
     * @param from the one that it comes from, -1 of the first
     */
    void add(int atNode, int inDirection, int stillNeeds, long atCost, long atEstimate, int from) {
        int slot = (atNode << DIRECTION_BITS) + inDirection + 1;
        int last = newest(slot);
        for (int known = last; known >= 0; known = sibling[known]) {
            if (need[known] <= stillNeeds && cost[known] <= atCost) {
                return;
            }
        }
        for (int known = last; known >= 0; known = sibling[known]) {
            useless[known] |= need[known] >= stillNeeds && cost[known] > atCost;
        }
        if (count == node.length) {
            grow();
        }
        int label = count++;
        node[label] = atNode;
        direction[label] = inDirection;
        need[label] = stillNeeds;
        cost[label] = atCost;
        before[label] = from;
        useless[label] = false;
        sibling[label] = last;
        newest[slot] = (long) search << 32 | label;
        int at = waiting++;
        while (at > 0 && before(atEstimate, label, (at - 1) / 2)) {
            put(at, (at - 1) / 2);
            at = (at - 1) / 2;
        }
        heap[at] = label;
        keys[at] = atEstimate;
    }

    /** Takes the next label out of the queue; it stays readable. */
    int poll() {
        taken++;
        int first = heap[0];
        int last = heap[--waiting];
        long key = keys[waiting];
        int at = 0;
        while (2 * at + 1 < waiting) {
            int child = 2 * at + 1;
            if (child + 1 < waiting && before(keys[child + 1], heap[child + 1], child)) {
                child++;
            }
            if (before(key, last, child)) {
                break;
            }
            put(at, child);
            at = child;
        }
        heap[at] = last;
        keys[at] = key;
        return first;
    }

    private void put(int at, int from) {
        heap[at] = heap[from];
        keys[at] = keys[from];
    }

    /** Whether a label comes before the one at a place of the queue. */
    private boolean before(long key, int label, int place) {
        if (key != keys[place]) {
            return key < keys[place];
        }
        int other = heap[place];
        return cost[label] != cost[other] ? cost[label] > cost[other] : label < other;
    }

    private void grow() {
        int size = 2 * node.length;
        node = Arrays.copyOf(node, size);
        direction = Arrays.copyOf(direction, size);
        need = Arrays.copyOf(need, size);
        before = Arrays.copyOf(before, size);
        cost = Arrays.copyOf(cost, size);
        sibling = Arrays.copyOf(sibling, size);
        useless = Arrays.copyOf(useless, size);
        heap = Arrays.copyOf(heap, size);
        keys = Arrays.copyOf(keys, size);
    }
}

package org.shelterwright.solver.route.drop;

import java.util.Arrays;

/**
 * The labels of a search in flat arrays, by place and direction, and the queue of those still to be looked at: the least estimate
 * first; of equals the one farthest on, then the first made. Of labels with the same place and direction, one that needs no more
 * straight and costs no more makes another useless. Used again from search to search. Not for several threads.
 */
final class Frontier {
    private static final int FIRST = 1 << 10;

    /** Six, and none at the start. */
    private static final int DIRECTIONS = 7;

    int[] node = new int[FIRST];
    int[] direction = new int[FIRST];
    int[] need = new int[FIRST];
    int[] before = new int[FIRST];
    long[] cost = new long[FIRST];
    private long[] estimate = new long[FIRST];
    private int[] sibling = new int[FIRST];
    private boolean[] useless = new boolean[FIRST];
    private int[] heap = new int[FIRST];
    private int[] newest = new int[0];
    private int[] searchOf = new int[0];
    private int search;
    private int waiting;
    private int count;
    private int taken;

    /** Begins a search over places numbered below a size. */
    void begin(int places) {
        if (newest.length < DIRECTIONS * places) {
            newest = new int[DIRECTIONS * places];
            searchOf = new int[DIRECTIONS * places];
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

    /** Whether a known label makes this one useless; if not, it makes useless what costs more and needs as much straight. */
    boolean beaten(int atNode, int inDirection, int stillNeeds, long atCost) {
        int label = newest(slot(atNode, inDirection));
        for (int known = label; known >= 0; known = sibling[known]) {
            if (need[known] <= stillNeeds && cost[known] <= atCost) {
                return true;
            }
        }
        for (int known = label; known >= 0; known = sibling[known]) {
            useless[known] |= need[known] >= stillNeeds && cost[known] > atCost;
        }
        return false;
    }

    private static int slot(int node, int direction) {
        return DIRECTIONS * node + direction + 1;
    }

    /** The label that this search made last for a place and direction; -1 if none. */
    private int newest(int slot) {
        return searchOf[slot] == search ? newest[slot] : -1;
    }

    boolean isEmpty() {
        return waiting == 0;
    }

    long estimate(int label) {
        return estimate[label];
    }

    /** Makes a label; {@code before} is the one that it comes from, -1 of the first. */
    void add(int atNode, int inDirection, int stillNeeds, long atCost, long atEstimate, int from) {
        if (count == node.length) {
            grow();
        }
        int label = count++;
        node[label] = atNode;
        direction[label] = inDirection;
        need[label] = stillNeeds;
        cost[label] = atCost;
        estimate[label] = atEstimate;
        before[label] = from;
        useless[label] = false;
        int slot = slot(atNode, inDirection);
        sibling[label] = newest(slot);
        newest[slot] = label;
        searchOf[slot] = search;
        int at = waiting++;
        while (at > 0 && less(label, heap[(at - 1) / 2])) {
            heap[at] = heap[(at - 1) / 2];
            at = (at - 1) / 2;
        }
        heap[at] = label;
    }

    /** Takes the next label out of the queue; it stays readable. */
    int poll() {
        taken++;
        int first = heap[0];
        int last = heap[--waiting];
        int at = 0;
        while (2 * at + 1 < waiting) {
            int child = 2 * at + 1;
            if (child + 1 < waiting && less(heap[child + 1], heap[child])) {
                child++;
            }
            if (!less(heap[child], last)) {
                break;
            }
            heap[at] = heap[child];
            at = child;
        }
        heap[at] = last;
        return first;
    }

    private boolean less(int a, int b) {
        if (estimate[a] != estimate[b]) {
            return estimate[a] < estimate[b];
        }
        return cost[a] != cost[b] ? cost[a] > cost[b] : a < b;
    }

    private void grow() {
        int size = 2 * node.length;
        node = Arrays.copyOf(node, size);
        direction = Arrays.copyOf(direction, size);
        need = Arrays.copyOf(need, size);
        before = Arrays.copyOf(before, size);
        cost = Arrays.copyOf(cost, size);
        estimate = Arrays.copyOf(estimate, size);
        sibling = Arrays.copyOf(sibling, size);
        useless = Arrays.copyOf(useless, size);
        heap = Arrays.copyOf(heap, size);
    }
}

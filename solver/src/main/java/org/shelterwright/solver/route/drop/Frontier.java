package org.shelterwright.solver.route.drop;

import java.util.Arrays;

/**
 * The labels of a search in flat arrays, and the queue of those still to be looked at: the least estimate first; of equals the
 * one farthest on, then the first made. Used again from search to search. Not for several threads.
 */
final class Frontier {
    private static final int FIRST = 1 << 10;

    int[] node = new int[FIRST];
    int[] direction = new int[FIRST];
    int[] need = new int[FIRST];
    int[] before = new int[FIRST];
    long[] cost = new long[FIRST];
    private long[] estimate = new long[FIRST];
    private int[] heap = new int[FIRST];
    private int waiting;
    private int count;

    void clear() {
        waiting = 0;
        count = 0;
    }

    /** How many labels were made. */
    int count() {
        return count;
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
        int at = waiting++;
        while (at > 0 && less(label, heap[(at - 1) / 2])) {
            heap[at] = heap[(at - 1) / 2];
            at = (at - 1) / 2;
        }
        heap[at] = label;
    }

    /** Takes the next label out of the queue; it stays readable. */
    int poll() {
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
        heap = Arrays.copyOf(heap, size);
    }
}

package org.shelterwright.solver.route.drop;

import java.util.Arrays;

/**
 * What it costs at least from each node of a lattice to the target, bends left out: A* backwards from the target to the start,
 * and somewhat past it. Of a node that it has not reached by then it is known that a way through it would cost at least as
 * much as the search had come to. As an estimate for the search forwards it is exact but for bends, and never drops by more than
 * a step costs. Not for several threads.
 */
final class Outlook {
    /** How far it goes on past the start: two corners. */
    private static final long PAST = 2 * Laying.CORNER;

    /** Numbers of nodes are packed below what a way through them costs, into one number that orders the queue. */
    private static final int NODE_BITS = 24;

    private static final int NODE = (1 << NODE_BITS) - 1;

    private long[] least = new long[0];

    /** Twice the number of the last search that came to a node, and one more if that took it out of the queue. */
    private int[] mark = new int[0];

    private int search;
    private long[] heap = new long[1 << 10];
    private final int[] index = new int[3];
    private final long[][] away = new long[3][0];
    private int waiting;
    private long reached;
    private boolean joined;
    private boolean open;

    /** Searches from the target towards a start; gives up where nothing within a limit is left. */
    void look(Lattice lattice, int start, long limit) {
        prepare(lattice, start);
        for (int node : lattice.targets()) {
            lattice.indices(node, index);
            offer(node, 0, toStart(index));
        }
        long end = limit;
        while (waiting > 0 && heap[0] >> NODE_BITS <= end) {
            int node = (int) heap[0] & NODE;
            long whole = heap[0] >> NODE_BITS;
            poll();
            if (mark[node] != search) {
                continue;
            }
            mark[node] = search + 1;
            reached = whole;
            lattice.indices(node, index);
            open |= lattice.onRim(index);
            if (node == start) {
                joined = true;
                // Whatever the limit, so that equal questions have equal estimates.
                end = reached + PAST;
            }
            step(lattice, node);
        }
    }

    private void step(Lattice lattice, int node) {
        long here = toStart(index);
        for (int axis = 0; axis < 3; axis++) {
            int[] on = lattice.planes(axis);
            int i = index[axis];
            int down = lattice.price(node, 2 * axis);
            if (down != 0) {
                long cost = least[node] + (long) (on[i] - on[i - 1]) * down;
                offer(node - lattice.stride(axis), cost, here - away[axis][i] + away[axis][i - 1]);
            }
            int up = lattice.price(node, 2 * axis + 1);
            if (up != 0) {
                long cost = least[node] + (long) (on[i + 1] - on[i]) * up;
                offer(node + lattice.stride(axis), cost, here - away[axis][i] + away[axis][i + 1]);
            }
        }
    }

    /** Whether the start can be reached at all. */
    boolean joined() {
        return joined;
    }

    /** Whether the search came to where the part that is looked at ends: then something may lead out of it there. */
    boolean open() {
        return open;
    }

    /** A lower bound of the cost from a node to the target; {@code indices} are those of the node. */
    long from(int node, int[] indices) {
        return mark[node] == search + 1 ? least[node] : Math.max(0, reached - toStart(indices));
    }

    private long toStart(int[] indices) {
        return away[0][indices[0]] + away[1][indices[1]] + away[2][indices[2]];
    }

    private void prepare(Lattice about, int from) {
        int size = about.size();
        if (least.length < size) {
            least = new long[size];
            mark = new int[size];
            search = 0;
        }
        search += 2;
        about.indices(from, index);
        for (int axis = 0; axis < 3; axis++) {
            int[] on = about.planes(axis);
            if (away[axis].length < on.length) {
                away[axis] = new long[2 * on.length];
            }
            for (int i = 0; i < on.length; i++) {
                away[axis][i] = (long) Math.abs(on[i] - on[index[axis]]) * Laying.SURFACE;
            }
        }
        waiting = 0;
        reached = 0;
        joined = false;
        open = false;
    }

    private void offer(int node, long cost, long toStart) {
        if (mark[node] >= search && least[node] <= cost) {
            return;
        }
        mark[node] = search;
        least[node] = cost;
        if (waiting == heap.length) {
            heap = Arrays.copyOf(heap, 2 * waiting);
        }
        long packed = cost + toStart << NODE_BITS | node;
        int at = waiting++;
        while (at > 0 && packed < heap[(at - 1) / 2]) {
            heap[at] = heap[(at - 1) / 2];
            at = (at - 1) / 2;
        }
        heap[at] = packed;
    }

    private void poll() {
        long last = heap[--waiting];
        int at = 0;
        while (2 * at + 1 < waiting) {
            int child = 2 * at + 1;
            if (child + 1 < waiting && heap[child + 1] < heap[child]) {
                child++;
            }
            if (heap[child] >= last) {
                break;
            }
            heap[at] = heap[child];
            at = child;
        }
        heap[at] = last;
    }
}

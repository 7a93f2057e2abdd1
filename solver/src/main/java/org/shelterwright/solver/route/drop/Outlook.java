package org.shelterwright.solver.route.drop;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/**
 * What it costs at least from each node of a lattice to the target, bends left out: A* backwards from the target to the start,
 * and somewhat past it. Of a node that it has not reached by then it is known that a way through it would cost at least as
 * much as the search had come to. As an estimate for the search forwards it is exact but for bends, and never drops by more than
 * a step costs. Not for several threads.
 */
final class Outlook {
    /** How far it goes on past the start: two corners. */
    private static final long PAST = 2 * Laying.CORNER;

    private long[] least = new long[0];
    private int[] searchOf = new int[0];
    private int search;
    private long[] whole = new long[0];
    private int[] heap = new int[1 << 10];
    private int[] place = new int[0];
    private final int[] index = new int[3];
    private final long[][] away = new long[3][0];
    private int start;
    private int waiting;
    private long reached;
    private boolean joined;
    private boolean open;

    /**
     * Searches from the target towards a start; gives up where nothing within a limit is left.
     *
     * @param onward what it costs at least from a place of the target on; {@code null}: nothing
     */
    void look(Lattice lattice, int from, @Nullable Onward onward, long limit) {
        prepare(lattice, from);
        for (int node : lattice.targets()) {
            lattice.indices(node, index);
            offer(node, onward == null ? 0 : onward.from(lattice.point(node)), toStart(index));
        }
        long end = limit;
        while (waiting > 0) {
            int node = heap[0];
            if (whole[node] > end) {
                break;
            }
            poll();
            reached = whole[node];
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
        long known = known(node);
        return known != Long.MAX_VALUE && whole[node] <= reached
                ? known
                : Math.min(known, Math.max(0, reached - toStart(indices)));
    }

    private long toStart(int[] indices) {
        return away[0][indices[0]] + away[1][indices[1]] + away[2][indices[2]];
    }

    private void prepare(Lattice about, int from) {
        int size = about.size();
        if (least.length < size) {
            least = new long[size];
            whole = new long[size];
            place = new int[size];
            searchOf = new int[size];
            search = 0;
        }
        search++;
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
        start = from;
        waiting = 0;
        reached = 0;
        joined = false;
        open = false;
    }

    private long known(int node) {
        return searchOf[node] == search ? least[node] : Long.MAX_VALUE;
    }

    private void offer(int node, long cost, long toStart) {
        long known = known(node);
        if (cost >= known) {
            return;
        }
        int at;
        if (known == Long.MAX_VALUE) {
            searchOf[node] = search;
            if (waiting == heap.length) {
                heap = Arrays.copyOf(heap, 2 * waiting);
            }
            at = waiting++;
            whole[node] = cost + toStart;
        } else {
            at = place[node];
            whole[node] += cost - known;
        }
        least[node] = cost;
        while (at > 0 && before(node, heap[(at - 1) / 2])) {
            put(at, heap[(at - 1) / 2]);
            at = (at - 1) / 2;
        }
        put(at, node);
    }

    private boolean before(int a, int b) {
        return whole[a] < whole[b] || whole[a] == whole[b] && least[a] > least[b];
    }

    private void poll() {
        int last = heap[--waiting];
        int at = 0;
        while (2 * at + 1 < waiting) {
            int child = 2 * at + 1;
            if (child + 1 < waiting && before(heap[child + 1], heap[child])) {
                child++;
            }
            if (!before(heap[child], last)) {
                break;
            }
            put(at, heap[child]);
            at = child;
        }
        put(at, last);
    }

    private void put(int at, int node) {
        heap[at] = node;
        place[node] = at;
    }
}

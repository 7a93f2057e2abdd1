package org.shelterwright.solver.route.drop;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Axis;

/**
 * What it costs at least from each node of a lattice to the target, bends left out but for the last: A* backwards from the target
 * to the start, and somewhat past it. It begins where the last straight is as long as the bend before it asks. Of a node that it has
 * not reached by then it is known that a way through it would cost at least as much as the search had come to. Not for several
 * threads.
 */
final class Outlook {
    /** How far it goes on past the start: two corners. */
    private static final long PAST = 2 * Laying.CORNER;

    private long[] least = new long[0];
    private long[] whole = new long[0];
    private int[] searchOf = new int[0];
    private int[] place = new int[0];
    private long[] straight = new long[0];
    private int[] straightOf = new int[0];
    private int[] heap = new int[1 << 10];
    private final int[] index = new int[3];
    private final long[][] away = new long[3][0];
    private int search;
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
    void look(Lattice lattice, int from, Target target, int radius, @Nullable Onward onward, long limit) {
        prepare(lattice, from);
        for (int node : lattice.targets()) {
            long cost = onward == null ? 0 : onward.from(lattice.point(node));
            Axis line = target.tray() ? lattice.along(node, target) : null;
            for (int direction = 0; direction < 6; direction++) {
                boolean turns = target.tray() && (line == null || line.ordinal() != direction / 2);
                lattice.indices(node, index);
                last(lattice, node, direction, cost, turns ? 2 * radius : radius, radius);
            }
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
            for (int back = 0; back < 6; back++) {
                int price = lattice.price(node, back);
                if (price != 0) {
                    int axis = back / 2;
                    int there = index[axis] + 2 * (back & 1) - 1;
                    long cost = least[node] + (long) lattice.length(axis, index[axis], there) * price;
                    long rest = toStart(index) - away[axis][index[axis]] + away[axis][there];
                    offer(node + (there - index[axis]) * lattice.stride(axis), cost, rest);
                }
            }
        }
    }

    /**
     * Goes back along a last straight, until it is so long that anything may come before.
     *
     * @param direction in which a cable comes to the target
     * @param due how long it must be if a bend comes before
     * @param less by how much less if it begins at the port
     */
    private void last(Lattice lattice, int target, int direction, long costThere, int due, int less) {
        int axis = direction / 2;
        int back = direction ^ 1;
        int node = target;
        long cost = costThere;
        int length = 0;
        while (true) {
            open |= lattice.onRim(index);
            if (node == target && node == start || length >= due || node == start && length >= due - less) {
                offer(node, cost, toStart(index));
            }
            int slot = 6 * node + direction;
            if (straightOf[slot] != search || cost < straight[slot]) {
                straightOf[slot] = search;
                straight[slot] = cost;
            }
            int price = lattice.price(node, back);
            if (length >= due || price == 0) {
                return;
            }
            int there = index[axis] + 2 * (back & 1) - 1;
            int step = lattice.length(axis, index[axis], there);
            length += step;
            cost += (long) step * price;
            node += (there - index[axis]) * lattice.stride(axis);
            index[axis] = there;
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

    /**
     * A lower bound of the cost from a node to the target.
     *
     * @param indices those of the node
     * @param direction in which the cable comes there; -1 if it begins there
     */
    long from(int node, int[] indices, int direction) {
        long known = known(node);
        long bound = known != Long.MAX_VALUE && whole[node] <= reached
                ? known
                : Math.min(known, Math.max(0, reached - toStart(indices)));
        int slot = 6 * node + direction;
        return direction >= 0 && straightOf[slot] == search ? Math.min(bound, straight[slot]) : bound;
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
            straight = new long[6 * size];
            straightOf = new int[6 * size];
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

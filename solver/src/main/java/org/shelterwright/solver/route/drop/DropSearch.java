package org.shelterwright.solver.route.drop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;

/**
 * Finds the cheapest run from a port to a target, by A* over grid place, direction and the straight that the next bend still
 * needs. Exact on its lattice: the estimate, the cost without bends ({@link Outlook}) and the corners that
 * it takes at least, never exceeds the cost. It first
 * looks near both ends and then in the whole room. Literature: Hart, Nilsson and Raphael (1968); Hanan (1966). Not for several
 * threads.
 */
public final class DropSearch {
    /** No limit on the cost. */
    public static final long ANY_COST = Long.MAX_VALUE / 4;

    /** No limit on the cost, but only the room near both ends is looked at. */
    public static final long NEAR = ANY_COST - 1;

    private static final int MARGIN = 300 * Lengths.MM;
    private static final int MOST_LABELS = 80_000;

    /** How many labels a search with a limit may look at: it is for runs that are of use only if they are cheap. */
    private static final int FEW_LABELS = 8_000;

    private final Obstacles about;
    private final Outlook outlook;
    private final Frontier labels;
    private final int[] index = new int[3];

    public DropSearch(Surroundings about) {
        this(Obstacles.of(about), new Slate());
    }

    /** @param slate what it works on; no other search may use it at the same time */
    public DropSearch(Obstacles about, Slate slate) {
        this.about = about;
        this.outlook = slate.outlook;
        this.labels = slate.labels;
    }

    /**
     * What was found.
     *
     * @param region the part of the room that it depends on: whatever changes outside it, the answer is the same
     * @param farther whether a search with a limit would not have come so far: it was found only in the whole room, or late
     */
    public record Found(Optional<Drop> drop, Box region, boolean farther) {}

    /**
     * Finds a run.
     *
     * @param radius least bend radius of the cable (µm)
     * @param limit runs that cost more are of no use; with a limit it also gives up sooner
     * @return the cheapest; empty if there is none within the limit
     */
    public Optional<Drop> find(Point start, Target target, int radius, long limit) {
        return look(start, target, radius, limit).drop();
    }

    /** The same, with what the answer depends on. */
    public Found look(Point start, Target target, int radius, long limit) {
        if (!about.room().contains(start)) {
            return new Found(Optional.empty(), Box.between(start, start), false);
        }
        Box near = near(start, target).intersection(about.room());
        Lattice lattice = new Lattice(about, near, start, target, radius);
        if (Pocket.sealed(lattice, lattice.node(start))) {
            return new Found(Optional.empty(), near, false);
        }
        Optional<Drop> found = search(lattice, start, target, radius, limit);
        if (found.isPresent() || limit < ANY_COST || hopeless(lattice, start)) {
            return new Found(found, near, labels.taken() >= FEW_LABELS);
        }
        Lattice whole = new Lattice(about, about.room(), start, target, radius);
        return new Found(search(whole, start, target, radius, limit), about.room(), true);
    }

    /** Whether one of the ends is closed in, so that the rest of the room does not help. */
    private boolean hopeless(Lattice lattice, Point start) {
        return !outlook.joined() && (!outlook.open() || Pocket.closed(lattice, lattice.node(start)));
    }

    private Optional<Drop> search(Lattice lattice, Point start, Target target, int radius, long limit) {
        int first = lattice.node(start);
        labels.begin(lattice.size());
        outlook.look(lattice, first, limit);
        if (!outlook.joined()) {
            return Optional.empty();
        }
        lattice.indices(first, index);
        long least = estimate(lattice, first, -1);
        if (least <= limit) {
            labels.add(first, -1, 0, 0, least, -1);
        }
        int most = limit < ANY_COST ? FEW_LABELS : MOST_LABELS;
        while (!labels.isEmpty() && labels.taken() < most) {
            int label = labels.poll();
            if (labels.useless(label)) {
                continue;
            }
            lattice.indices(labels.node[label], index);
            if (ends(lattice, label, target, radius)) {
                return Optional.of(drop(lattice, label));
            }
            int old = labels.direction[label];
            if (old >= 0 && labels.need[label] > 0) {
                step(lattice, label, old, radius, limit);
                continue;
            }
            for (int direction = 0; direction < 6; direction++) {
                if (old < 0 || direction != (old ^ 1)) {
                    step(lattice, label, direction, radius, limit);
                }
            }
        }
        return Optional.empty();
    }

    /** Whether a run may end here: on the target, with room for the corner into the tray. */
    private boolean ends(Lattice lattice, int label, Target target, int radius) {
        if (!lattice.onTarget(labels.node[label], index)) {
            return false;
        }
        int direction = labels.direction[label];
        if (direction < 0) {
            return true;
        }
        Axis line = lattice.along(labels.node[label], target);
        boolean turns = target.tray() && (line == null || line.ordinal() != direction / 2);
        return labels.need[label] <= (turns ? 0 : radius);
    }

    private void step(Lattice lattice, int from, int direction, int radius, long limit) {
        int axis = direction / 2;
        int old = labels.direction[from];
        boolean turn = old >= 0 && old != direction;
        int price = lattice.price(labels.node[from], direction);
        if (price == 0) {
            return;
        }
        int on = index[axis];
        int beyond = on + 2 * (direction & 1) - 1;
        int node = labels.node[from] + (beyond - on) * lattice.stride(axis);
        int length = lattice.length(axis, on, beyond);
        int due = old < 0 ? radius : turn ? 2 * radius : labels.need[from];
        int need = Math.max(0, due - length);
        long cost = labels.cost[from] + (long) length * price + (turn ? Laying.CORNER : 0);
        index[axis] = beyond;
        long estimate = cost + estimate(lattice, node, direction);
        index[axis] = on;
        if (estimate <= limit) {
            labels.add(node, direction, need, cost, estimate, from);
        }
    }

    /** What it costs at least from a node, whose indices are set, to the target. */
    private long estimate(Lattice lattice, int node, int direction) {
        return outlook.from(node, index) + lattice.corners(node, index, direction) * Laying.CORNER;
    }

    private Drop drop(Lattice lattice, int end) {
        List<Point> path = new ArrayList<>();
        int direction = -2;
        for (int label = end; label >= 0; label = labels.before[label]) {
            if (labels.before[label] < 0 || labels.direction[label] != direction) {
                path.add(0, lattice.point(labels.node[label]));
            }
            direction = labels.direction[label];
        }
        return new Drop(path, labels.cost[end]);
    }

    /** The part that is looked at first, and with a limit alone, as far as it is in the room. */
    public static Box near(Point start, Target target) {
        return Box.between(start, start).hull(nearest(start, target)).grown(MARGIN, MARGIN, MARGIN);
    }

    /** The place of the target that is nearest along the axes. */
    private static Box nearest(Point start, Target target) {
        Point best = target.path().get(0);
        int least = Integer.MAX_VALUE;
        for (int i = 0; i < target.path().size(); i++) {
            Point a = target.path().get(i);
            Point b = target.path().get(Math.max(0, i - 1));
            Point on = new Point(
                    inside(start.x(), a.x(), b.x()), inside(start.y(), a.y(), b.y()), inside(start.z(), a.z(), b.z()));
            int away = Math.abs(on.x() - start.x()) + Math.abs(on.y() - start.y()) + Math.abs(on.z() - start.z());
            if (away < least) {
                least = away;
                best = on;
            }
        }
        return Box.between(best, best);
    }

    private static int inside(int value, int a, int b) {
        return Math.max(Math.min(a, b), Math.min(value, Math.max(a, b)));
    }
}

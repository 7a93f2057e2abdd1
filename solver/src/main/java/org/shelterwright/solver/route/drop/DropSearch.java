package org.shelterwright.solver.route.drop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;

/**
 * Finds the cheapest run from a port to a target, by A* over grid place, direction and the straight that the next bend still
 * needs. Exact on its lattice: the estimate, distance along the axes at the cheapest price, never exceeds the cost. It first
 * looks near both ends and then in the whole room. Literature: Hart, Nilsson and Raphael (1968); Hanan (1966). Not for several
 * threads.
 */
public final class DropSearch {
    /** No limit on the cost. */
    public static final long ANY_COST = Long.MAX_VALUE / 4;

    private static final int MARGIN = 300 * Lengths.MM;
    private static final int MOST_LABELS = 400_000;

    private final Surroundings about;

    private static final class Label implements Comparable<Label> {
        private final int node;
        private final int direction;
        private final int need;
        private final long cost;
        private final long estimate;
        private final int number;
        private final @Nullable Label before;

        Label(int node, int direction, int need, long cost, long estimate, int number, @Nullable Label before) {
            this.node = node;
            this.direction = direction;
            this.need = need;
            this.cost = cost;
            this.estimate = estimate;
            this.number = number;
            this.before = before;
        }

        /** The least estimate first; of equals the one farthest on, then the first made. */
        @Override
        public int compareTo(Label o) {
            int order = Long.compare(estimate, o.estimate);
            order = order != 0 ? order : Long.compare(o.cost, cost);
            return order != 0 ? order : Integer.compare(number, o.number);
        }
    }

    public DropSearch(Surroundings about) {
        this.about = about;
    }

    /**
     * Finds a run.
     *
     * @param radius least bend radius of the cable (µm)
     * @param limit runs that cost more are of no use
     * @return the cheapest; empty if there is none within the limit
     */
    public Optional<Drop> find(Point start, Target target, int radius, long limit) {
        if (!about.room().contains(start)) {
            return Optional.empty();
        }
        Box near = Box.between(start, start)
                .hull(nearest(start, target))
                .grown(MARGIN, MARGIN, MARGIN)
                .intersection(about.room());
        Optional<Drop> found = search(new Lattice(about, near, start, target, radius), start, target, radius, limit);
        return found.isPresent() || limit < ANY_COST
                ? found
                : search(new Lattice(about, about.room(), start, target, radius), start, target, radius, limit);
    }

    private Optional<Drop> search(Lattice lattice, Point start, Target target, int radius, long limit) {
        PriorityQueue<Label> queue = new PriorityQueue<>();
        LongTable best = new LongTable();
        int first = lattice.node(start);
        int count = 0;
        queue.add(new Label(first, -1, 0, 0, lattice.away(first, target) * Laying.SURFACE, count++, null));
        while (!queue.isEmpty() && count < MOST_LABELS) {
            Label label = queue.poll();
            if (label.estimate > limit || best.get(key(label)) < label.cost) {
                if (label.estimate > limit) {
                    return Optional.empty();
                }
                continue;
            }
            if (ends(lattice, label, target, radius)) {
                return Optional.of(drop(lattice, label));
            }
            for (int direction = 0; direction < 6; direction++) {
                Label next = step(lattice, label, direction, target, radius, count);
                if (next != null && next.cost < best.get(key(next)) && next.cost < best.get(freeKey(next))) {
                    best.put(key(next), next.cost);
                    queue.add(next);
                    count++;
                }
            }
        }
        return Optional.empty();
    }

    /** Whether a run may end here: on the target, with room for the corner into the tray. */
    private static boolean ends(Lattice lattice, Label label, Target target, int radius) {
        if (lattice.away(label.node, target) != 0) {
            return false;
        }
        if (label.direction < 0) {
            return true;
        }
        Point at = lattice.point(label.node);
        Axis line = target.along(at.x(), at.y(), at.z());
        boolean turns = target.tray() && (line == null || line.ordinal() != label.direction / 2);
        return label.need <= (turns ? 0 : radius);
    }

    private static @Nullable Label step(
            Lattice lattice, Label from, int direction, Target target, int radius, int number) {
        int axis = direction / 2;
        int old = from.direction;
        boolean turn = old >= 0 && old != direction;
        if (turn && (old / 2 == axis || from.need > 0)) {
            return null;
        }
        boolean up = direction % 2 == 1;
        int price = lattice.price(from.node, axis, up);
        if (price == 0) {
            return null;
        }
        int node = lattice.next(from.node, axis, up);
        int length = lattice.step(from.node, axis, up);
        int due = old < 0 ? radius : turn ? 2 * radius : from.need;
        long cost = from.cost + (long) length * price + (turn ? Laying.CORNER : 0);
        long estimate = cost + lattice.away(node, target) * Laying.SURFACE;
        return new Label(node, direction, Math.max(0, due - length), cost, estimate, number, from);
    }

    private static long key(Label label) {
        return ((long) label.node * 7 + label.direction + 1) << 26 | Math.min(label.need, (1 << 26) - 1);
    }

    /** The key of the same place and direction with no straight due: what is dearer than that is of no use. */
    private static long freeKey(Label label) {
        return ((long) label.node * 7 + label.direction + 1) << 26;
    }

    private static Drop drop(Lattice lattice, Label end) {
        List<Point> path = new ArrayList<>();
        Label label = end;
        int direction = -2;
        while (label != null) {
            if (label.before == null || label.direction != direction) {
                path.add(0, lattice.point(label.node));
            }
            direction = label.direction;
            label = label.before;
        }
        return new Drop(path, end.cost);
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

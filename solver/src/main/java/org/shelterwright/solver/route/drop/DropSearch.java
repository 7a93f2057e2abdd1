package org.shelterwright.solver.route.drop;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
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
    private static final int MARGIN = 400 * Lengths.MM;
    private static final int MOST_LABELS = 400_000;

    private final Surroundings about;

    private record Label(
            int[] at, int direction, int need, long cost, long estimate, int number, @Nullable Label before) {}

    public DropSearch(Surroundings about) {
        this.about = about;
    }

    /**
     * Finds a run.
     *
     * @param radius least bend radius of the cable (µm)
     * @return the cheapest; empty if there is none
     */
    public Optional<Drop> find(Point start, Target target, int radius) {
        if (!about.room().contains(start)) {
            return Optional.empty();
        }
        Box near = Box.between(start, start).hull(nearest(start, target)).grown(MARGIN, MARGIN, MARGIN);
        Optional<Drop> found = search(new Lattice(about, clipped(near), start, target, radius), start, target, radius);
        return found.isPresent()
                ? found
                : search(new Lattice(about, about.room(), start, target, radius), start, target, radius);
    }

    private Optional<Drop> search(Lattice lattice, Point start, Target target, int radius) {
        PriorityQueue<Label> queue = new PriorityQueue<>(DropSearch::compare);
        Map<Long, Long> best = new HashMap<>();
        int[] at = new int[3];
        for (Axis axis : Axis.values()) {
            at[axis.ordinal()] = lattice.index(axis.ordinal(), start.along(axis));
        }
        int count = 0;
        queue.add(new Label(at, -1, 0, 0, estimate(lattice, at, target), count++, null));
        while (!queue.isEmpty() && count < MOST_LABELS) {
            Label label = queue.poll();
            Long known = best.get(key(lattice, label));
            if (known != null && known < label.cost()) {
                continue;
            }
            if (ends(lattice, label, target, radius)) {
                return Optional.of(drop(lattice, label));
            }
            for (int direction = 0; direction < 6; direction++) {
                Label next = step(lattice, label, direction, target, radius, count);
                if (next != null) {
                    long key = key(lattice, next);
                    Long before = best.get(key);
                    if (before == null || next.cost() < before) {
                        best.put(key, next.cost());
                        queue.add(next);
                        count++;
                    }
                }
            }
        }
        return Optional.empty();
    }

    private static int compare(Label a, Label b) {
        int order = Long.compare(a.estimate(), b.estimate());
        order = order != 0 ? order : Long.compare(b.cost(), a.cost());
        return order != 0 ? order : Integer.compare(a.number(), b.number());
    }

    /** Whether a run may end here: on the target, with room for the corner into the tray. */
    private static boolean ends(Lattice lattice, Label label, Target target, int radius) {
        int x = lattice.planes[0][label.at()[0]];
        int y = lattice.planes[1][label.at()[1]];
        int z = lattice.planes[2][label.at()[2]];
        if (target.distance(x, y, z) != 0) {
            return false;
        }
        if (label.direction() < 0) {
            return true;
        }
        Axis line = target.along(x, y, z);
        boolean turns = target.tray() && (line == null || line.ordinal() != label.direction() / 2);
        return label.need() <= (turns ? 0 : radius);
    }

    private static @Nullable Label step(
            Lattice lattice, Label from, int direction, Target target, int radius, int number) {
        int axis = direction / 2;
        int sign = direction % 2 == 0 ? -1 : 1;
        int old = from.direction();
        boolean turn = old >= 0 && old != direction;
        if (turn && (old / 2 == axis || from.need() > 0)) {
            return null;
        }
        int index = from.at()[axis] + sign;
        if (index < 0 || index >= lattice.size(axis)) {
            return null;
        }
        int here = lattice.planes[axis][from.at()[axis]];
        int there = lattice.planes[axis][index];
        int au = (axis + 1) % 3;
        int av = (axis + 2) % 3;
        int price = lattice.price(
                axis,
                Math.min(here, there),
                Math.max(here, there),
                lattice.planes[au][from.at()[au]],
                lattice.planes[av][from.at()[av]]);
        if (price == 0) {
            return null;
        }
        int length = Math.abs(there - here);
        int due = old < 0 ? radius : turn ? 2 * radius : from.need();
        int[] at = from.at().clone();
        at[axis] = index;
        long cost = from.cost() + (long) length * price + (turn ? Laying.CORNER : 0);
        int need = Math.max(0, due - length);
        return new Label(at, direction, need, cost, cost + estimate(lattice, at, target), number, from);
    }

    private static long estimate(Lattice lattice, int[] at, Target target) {
        return (long) target.distance(lattice.planes[0][at[0]], lattice.planes[1][at[1]], lattice.planes[2][at[2]])
                * Laying.SURFACE;
    }

    /** Place, direction and need in one number; needs beyond 26 bits do not come up. */
    private static long key(Lattice lattice, Label label) {
        long place = ((long) label.at()[0] * lattice.size(1) + label.at()[1]) * lattice.size(2) + label.at()[2];
        return ((place * 7 + label.direction() + 1) << 26) | Math.min(label.need(), (1 << 26) - 1);
    }

    private static Drop drop(Lattice lattice, Label end) {
        List<Point> path = new ArrayList<>();
        Label label = end;
        int direction = -2;
        while (label != null) {
            Label before = label.before();
            Point point = new Point(
                    lattice.planes[0][label.at()[0]],
                    lattice.planes[1][label.at()[1]],
                    lattice.planes[2][label.at()[2]]);
            if (before == null || label.direction() != direction) {
                path.add(0, point);
            }
            direction = label.direction();
            label = before;
        }
        return new Drop(path, end.cost());
    }

    private Box clipped(Box box) {
        return box.intersection(about.room());
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

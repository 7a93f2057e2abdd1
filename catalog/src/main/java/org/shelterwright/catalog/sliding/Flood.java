package org.shelterwright.catalog.sliding;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;

/**
 * Spreads from a start through the free intervals of the rows, nearest to the goal first. A node is one interval of a row
 * at two levels; an edge is an interval of the strip between two rows, which lies in one interval of each.
 */
final class Flood {
    /** Weight of the way that is left against the way that was gone: found by measuring; more brings nothing. */
    private static final long TOWARDS_GOAL = 4;

    /** Lifting is dearer than pushing, so that ways stay low where they can. */
    private static final long LIFTING = 3;

    private record Node(int cell, int interval, int x, long gone, int parent) {}

    private final Rows rows;
    private final Levels ys;
    private final Levels zs;
    private final @Nullable Box goal;
    private final List<Node> nodes = new ArrayList<>();
    private final OpenNodes open = new OpenNodes();

    /** @param goal {@code null} to spread through all that can be reached */
    Flood(Rows rows, Levels ys, Levels zs, @Nullable Box goal) {
        this.rows = rows;
        this.ys = ys;
        this.zs = zs;
        this.goal = goal;
    }

    /**
     * Spreads until the goal is reached or nothing is left.
     *
     * @return the way to the goal, start first; empty if there is none
     */
    List<Point> run(Point start) {
        return run(List.of(start));
    }

    /** The same from several starts at once; the way begins at one of them. */
    List<Point> run(List<Point> starts) {
        for (Point start : starts) {
            int cell = rows.cell(Levels.cellOfLevel(ys.indexOf(start.y())), Levels.cellOfLevel(zs.indexOf(start.z())));
            int interval = holding(rows.intervals(cell), start.x(), start.x());
            if (interval >= 0) {
                enter(cell, interval, start.x(), 0, -1);
            }
        }
        while (!open.isEmpty()) {
            int number = open.remove();
            Node node = nodes.get(number);
            if (reaches(node)) {
                return path(number);
            }
            spread(number, node);
        }
        return List.of();
    }

    private void spread(int number, Node node) {
        int yCell = rows.yCell(node.cell());
        int zCell = rows.zCell(node.cell());
        step(number, node, yCell - 2, zCell);
        step(number, node, yCell + 2, zCell);
        step(number, node, yCell, zCell - 2);
        step(number, node, yCell, zCell + 2);
    }

    private void step(int number, Node node, int yCell, int zCell) {
        if (!rows.holds(yCell, zCell)) {
            return;
        }
        int to = rows.cell(yCell, zCell);
        int strip = rows.cell((rows.yCell(node.cell()) + yCell) / 2, (rows.zCell(node.cell()) + zCell) / 2);
        long across = Math.abs((long) ys.level(yCell / 2) - y(node))
                + LIFTING * Math.abs((long) zs.level(zCell / 2) - z(node));
        int[] own = rows.intervals(node.cell());
        int low = own[2 * node.interval()];
        int high = own[2 * node.interval() + 1];
        int[] between = rows.intervals(strip);
        for (int i = 0; 2 * i < between.length && between[2 * i] <= high; i++) {
            if (between[2 * i] < low || between[2 * i + 1] > high) {
                continue;
            }
            int x = Math.min(Math.max(node.x(), between[2 * i]), between[2 * i + 1]);
            int target = holding(rows.intervals(to), between[2 * i], between[2 * i + 1]);
            enter(to, target, x, node.gone() + Math.abs((long) x - node.x()) + across, number);
        }
    }

    private void enter(int cell, int interval, int x, long gone, int parent) {
        if (!rows.enter(cell, interval)) {
            return;
        }
        int number = nodes.size();
        nodes.add(new Node(cell, interval, x, gone, parent));
        Box to = goal;
        long left = to == null ? 0 : Math.max(0, Math.max((long) to.x0() - x, (long) x - to.x1()));
        open.add(gone + TOWARDS_GOAL * left, number);
    }

    private boolean reaches(Node node) {
        Box to = goal;
        int y = y(node);
        int z = z(node);
        int[] own = rows.intervals(node.cell());
        return to != null
                && y >= to.y0()
                && y <= to.y1()
                && z >= to.z0()
                && z <= to.z1()
                && own[2 * node.interval()] <= to.x1()
                && own[2 * node.interval() + 1] >= to.x0();
    }

    private List<Point> path(int last) {
        List<Point> back = new ArrayList<>();
        Node end = nodes.get(last);
        int[] own = rows.intervals(end.cell());
        Box to = goal;
        if (to != null) {
            int x = Math.min(
                    Math.max(end.x(), Math.max(to.x0(), own[2 * end.interval()])),
                    Math.min(to.x1(), own[2 * end.interval() + 1]));
            add(back, at(end, x));
        }
        add(back, at(end, end.x()));
        for (int number = last; nodes.get(number).parent() >= 0; ) {
            Node node = nodes.get(number);
            Node parent = nodes.get(node.parent());
            add(back, at(parent, node.x()));
            add(back, at(parent, parent.x()));
            number = node.parent();
        }
        Collections.reverse(back);
        return straightened(back);
    }

    private Point at(Node node, int x) {
        return new Point(x, y(node), z(node));
    }

    private int y(Node node) {
        return ys.level(rows.yCell(node.cell()) / 2);
    }

    private int z(Node node) {
        return zs.level(rows.zCell(node.cell()) / 2);
    }

    private static void add(List<Point> path, Point point) {
        if (path.isEmpty() || !path.get(path.size() - 1).equals(point)) {
            path.add(point);
        }
    }

    /** Leaves out points that lie on the line between their neighbours. */
    private static List<Point> straightened(List<Point> path) {
        List<Point> kept = new ArrayList<>();
        for (Point point : path) {
            int size = kept.size();
            if (size >= 2 && sameLine(kept.get(size - 2), kept.get(size - 1), point)) {
                kept.set(size - 1, point);
            } else {
                kept.add(point);
            }
        }
        return kept;
    }

    static boolean sameLine(Point a, Point b, Point c) {
        boolean x = a.y() == b.y() && b.y() == c.y() && a.z() == b.z() && b.z() == c.z();
        boolean y = a.x() == b.x() && b.x() == c.x() && a.z() == b.z() && b.z() == c.z();
        boolean z = a.x() == b.x() && b.x() == c.x() && a.y() == b.y() && b.y() == c.y();
        boolean onward = (long) (b.x() - a.x()) * (c.x() - b.x())
                        + (long) (b.y() - a.y()) * (c.y() - b.y())
                        + (long) (b.z() - a.z()) * (c.z() - b.z())
                >= 0;
        return (x || y || z) && onward;
    }

    /** A point of each interval of other rows on the same levels that lies in what was reached, nearest to where that was entered. */
    List<Point> within(Rows others) {
        List<Point> points = new ArrayList<>();
        for (Node node : nodes) {
            int[] own = rows.intervals(node.cell());
            int[] theirs = others.intervals(node.cell());
            for (int i = 0; i < theirs.length; i += 2) {
                if (theirs[i] >= own[2 * node.interval()] && theirs[i + 1] <= own[2 * node.interval() + 1]) {
                    points.add(at(node, Math.min(Math.max(node.x(), theirs[i]), theirs[i + 1])));
                }
            }
        }
        return points;
    }

    /** The least cuboid of shifts that holds all that was reached. */
    Box reached() {
        Box hull = null;
        for (Node node : nodes) {
            int[] own = rows.intervals(node.cell());
            Point low = at(node, own[2 * node.interval()]);
            Box one = Box.between(low, at(node, own[2 * node.interval() + 1]));
            hull = hull == null ? one : hull.hull(one);
        }
        if (hull == null) {
            throw new IllegalStateException("Nothing was reached.");
        }
        return hull;
    }

    /**
     * The obstacles that bound what was reached: those that end an interval of it, and those that lie in a strip beside
     * one.
     */
    BitSet frontier() {
        long[] bounding = rows.noObstacles();
        for (Node node : nodes) {
            markAround(rows, node.cell(), node.interval(), bounding);
        }
        return BitSet.valueOf(bounding);
    }

    /** Marks what ends an interval of a row, and what lies in a strip beside it. */
    static void markAround(Rows rows, int cell, int interval, long[] bounding) {
        int[] own = rows.intervals(cell);
        int low = own[2 * interval];
        int high = own[2 * interval + 1];
        int yCell = rows.yCell(cell);
        int zCell = rows.zCell(cell);
        rows.markEnding(cell, low, high, bounding);
        rows.markMeeting(yCell - 1, zCell, low, high, bounding);
        rows.markMeeting(yCell + 1, zCell, low, high, bounding);
        rows.markMeeting(yCell, zCell - 1, low, high, bounding);
        rows.markMeeting(yCell, zCell + 1, low, high, bounding);
    }

    /** Which of the intervals holds the given one whole; -1 if none does. */
    static int holding(int[] intervals, int low, int high) {
        int first = 0;
        int last = intervals.length / 2 - 1;
        while (first <= last) {
            int middle = (first + last) >>> 1;
            if (intervals[2 * middle + 1] < low) {
                first = middle + 1;
            } else if (intervals[2 * middle] > low) {
                last = middle - 1;
            } else {
                return intervals[2 * middle + 1] >= high ? middle : -1;
            }
        }
        return -1;
    }
}

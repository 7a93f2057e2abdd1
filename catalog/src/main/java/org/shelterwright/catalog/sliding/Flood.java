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
 *
 * <p>A thing that may turn has a layer of free space for each quarter turn, all on the same levels. Two layers are joined wherever
 * there is room for the whole turn: that room lies in the free space of each layer, so its intervals lie in theirs.
 */
final class Flood {
    /** Weight of the way that is left against the way that was gone: found by measuring; more brings nothing. */
    private static final long TOWARDS_GOAL = 4;

    /** Lifting is dearer than pushing, so that ways stay low where they can. */
    private static final long LIFTING = 3;

    /** A turn is as dear as this way (µm), so that there are few. */
    private static final long TURN = 1_000_000;

    /**
     * One layer.
     *
     * @param goal shifts at which the thing is in its target; {@code null} if it never is
     */
    record Layer(Rows rows, @Nullable Box goal) {}

    private record Node(int layer, int cell, int interval, int x, long gone, int parent) {}

    private final Levels ys;
    private final Levels zs;
    private final List<@Nullable Layer> layers;
    private final @Nullable Rows turning;
    private final List<Node> nodes = new ArrayList<>();
    private final OpenNodes open = new OpenNodes();

    /** Of a thing that does not turn. */
    Flood(Levels ys, Levels zs, Layer only) {
        this(ys, zs, List.of(only), null);
    }

    /**
     * Of a thing that may turn.
     *
     * @param layers by quarters; {@code null} where the turned thing has no room at all
     * @param turning where there is room for a turn; {@code null} if nowhere
     */
    Flood(Levels ys, Levels zs, List<@Nullable Layer> layers, @Nullable Rows turning) {
        this.ys = ys;
        this.zs = zs;
        this.layers = layers;
        this.turning = turning;
    }

    /**
     * Spreads from starts in the first layer until the goal is reached or nothing is left.
     *
     * @return the way to the goal, beginning at one of the starts; empty if there is none
     */
    List<Stage> run(List<Point> starts) {
        for (Point start : starts) {
            int cell =
                    rows(0).cell(Levels.cellOfLevel(ys.indexOf(start.y())), Levels.cellOfLevel(zs.indexOf(start.z())));
            int interval = holding(rows(0).intervals(cell), start.x(), start.x());
            if (interval >= 0) {
                enter(0, cell, interval, start.x(), 0, -1);
            }
        }
        while (!open.isEmpty()) {
            int number = open.remove();
            Node node = nodes.get(number);
            if (reaches(node)) {
                return path(number);
            }
            slide(number, node);
            turn(number, node);
        }
        return List.of();
    }

    private Layer layer(int layer) {
        Layer one = layers.get(layer);
        if (one == null) {
            throw new IllegalStateException("A layer without room is never entered.");
        }
        return one;
    }

    private Rows rows(int layer) {
        return layer(layer).rows();
    }

    private void slide(int number, Node node) {
        Rows rows = rows(node.layer());
        int yCell = rows.yCell(node.cell());
        int zCell = rows.zCell(node.cell());
        step(number, node, yCell - 2, zCell);
        step(number, node, yCell + 2, zCell);
        step(number, node, yCell, zCell - 2);
        step(number, node, yCell, zCell + 2);
    }

    private void step(int number, Node node, int yCell, int zCell) {
        Rows rows = rows(node.layer());
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
            if (between[2 * i] >= low && between[2 * i + 1] <= high) {
                int x = Math.min(Math.max(node.x(), between[2 * i]), between[2 * i + 1]);
                int target = holding(rows.intervals(to), between[2 * i], between[2 * i + 1]);
                enter(node.layer(), to, target, x, node.gone() + Math.abs((long) x - node.x()) + across, number);
            }
        }
    }

    private void turn(int number, Node node) {
        Rows room = turning;
        if (room == null) {
            return;
        }
        int[] own = rows(node.layer()).intervals(node.cell());
        int low = own[2 * node.interval()];
        int high = own[2 * node.interval() + 1];
        int[] free = room.intervals(node.cell());
        for (int i = 0; 2 * i < free.length && free[2 * i] <= high; i++) {
            if (free[2 * i] < low || free[2 * i + 1] > high) {
                continue;
            }
            int x = Math.min(Math.max(node.x(), free[2 * i]), free[2 * i + 1]);
            for (int layer = 0; layer < layers.size(); layer++) {
                if (layer != node.layer() && layers.get(layer) != null) {
                    int target = holding(rows(layer).intervals(node.cell()), free[2 * i], free[2 * i + 1]);
                    enter(layer, node.cell(), target, x, node.gone() + Math.abs((long) x - node.x()) + TURN, number);
                }
            }
        }
    }

    private void enter(int layer, int cell, int interval, int x, long gone, int parent) {
        if (!rows(layer).enter(cell, interval)) {
            return;
        }
        int number = nodes.size();
        nodes.add(new Node(layer, cell, interval, x, gone, parent));
        Box goal = layer(layer).goal();
        long left = goal == null ? 0 : Math.max(0, Math.max((long) goal.x0() - x, (long) x - goal.x1()));
        open.add(gone + TOWARDS_GOAL * left, number);
    }

    private boolean reaches(Node node) {
        Box goal = layer(node.layer()).goal();
        int y = y(node);
        int z = z(node);
        int[] own = rows(node.layer()).intervals(node.cell());
        return goal != null
                && y >= goal.y0()
                && y <= goal.y1()
                && z >= goal.z0()
                && z <= goal.z1()
                && own[2 * node.interval()] <= goal.x1()
                && own[2 * node.interval() + 1] >= goal.x0();
    }

    private List<Stage> path(int last) {
        List<Stage> back = new ArrayList<>();
        Node end = nodes.get(last);
        Box goal = layer(end.layer()).goal();
        int[] own = rows(end.layer()).intervals(end.cell());
        if (goal != null) {
            int x = Math.min(
                    Math.max(end.x(), Math.max(goal.x0(), own[2 * end.interval()])),
                    Math.min(goal.x1(), own[2 * end.interval() + 1]));
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
        return back;
    }

    private Stage at(Node node, int x) {
        return new Stage(node.layer(), new Point(x, y(node), z(node)));
    }

    private int y(Node node) {
        return ys.level(rows(node.layer()).yCell(node.cell()) / 2);
    }

    private int z(Node node) {
        return zs.level(rows(node.layer()).zCell(node.cell()) / 2);
    }

    private static void add(List<Stage> path, Stage stage) {
        if (path.isEmpty() || !path.get(path.size() - 1).equals(stage)) {
            path.add(stage);
        }
    }

    /** A point of each interval of other rows on the same levels that lies in what was reached, nearest to where that was entered. */
    List<Point> within(Rows others) {
        List<Point> points = new ArrayList<>();
        for (Node node : nodes) {
            int[] own = rows(node.layer()).intervals(node.cell());
            int[] theirs = others.intervals(node.cell());
            for (int i = 0; i < theirs.length; i += 2) {
                if (theirs[i] >= own[2 * node.interval()] && theirs[i + 1] <= own[2 * node.interval() + 1]) {
                    points.add(at(node, Math.min(Math.max(node.x(), theirs[i]), theirs[i + 1]))
                            .shift());
                }
            }
        }
        return points;
    }

    /** The least cuboid of shifts that holds all that was reached, in any layer. */
    Box reached() {
        Box hull = null;
        for (Node node : nodes) {
            int[] own = rows(node.layer()).intervals(node.cell());
            Point low = at(node, own[2 * node.interval()]).shift();
            Box one = Box.between(low, at(node, own[2 * node.interval() + 1]).shift());
            hull = hull == null ? one : hull.hull(one);
        }
        if (hull == null) {
            throw new IllegalStateException("Nothing was reached.");
        }
        return hull;
    }

    /**
     * The obstacles of a layer that bound what was reached in it: those that end an interval of it, and those that lie in a strip
     * beside one.
     */
    BitSet frontier(int layer) {
        Rows rows = rows(layer);
        long[] bounding = rows.noObstacles();
        for (Node node : nodes) {
            if (node.layer() == layer) {
                markAround(rows, node.cell(), node.interval(), bounding);
            }
        }
        return BitSet.valueOf(bounding);
    }

    /** Marks what ends an interval of a row, and what lies in a strip beside it. */
    private static void markAround(Rows rows, int cell, int interval, long[] bounding) {
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
    private static int holding(int[] intervals, int low, int high) {
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

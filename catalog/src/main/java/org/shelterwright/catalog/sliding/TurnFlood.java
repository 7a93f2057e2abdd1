package org.shelterwright.catalog.sliding;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;

/**
 * Spreads through four layers of free space, one a quarter turn, which share their levels. Two layers are joined wherever
 * there is room for the whole turn: that room lies in the free space of each layer, so its intervals lie in theirs.
 */
final class TurnFlood {
    private static final long TOWARDS_GOAL = 4;
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
    private final Rows room;
    private final List<Node> nodes = new ArrayList<>();
    private final OpenNodes open = new OpenNodes();

    /**
     * @param layers by quarters; {@code null} where the turned thing has no room at all
     * @param room where there is room for a turn
     */
    TurnFlood(Levels ys, Levels zs, List<@Nullable Layer> layers, Rows room) {
        this.ys = ys;
        this.zs = zs;
        this.layers = layers;
        this.room = room;
    }

    /** Spreads from layer 0; gives the way, start first, or nothing. */
    List<Stage> run(Point start) {
        Layer first = layers.get(0);
        if (first == null) {
            return List.of();
        }
        int cell = room.cell(Levels.cellOfLevel(ys.indexOf(start.y())), Levels.cellOfLevel(zs.indexOf(start.z())));
        int interval = Flood.holding(first.rows().intervals(cell), start.x(), start.x());
        if (interval < 0) {
            return List.of();
        }
        enter(0, cell, interval, start.x(), 0, -1);
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

    private Rows rows(int layer) {
        Layer one = layers.get(layer);
        if (one == null) {
            throw new IllegalStateException("A layer without room is never entered.");
        }
        return one.rows();
    }

    private void spread(int number, Node node) {
        slide(number, node);
        turn(number, node);
    }

    private void slide(int number, Node node) {
        int yCell = room.yCell(node.cell());
        int zCell = room.zCell(node.cell());
        step(number, node, yCell - 2, zCell);
        step(number, node, yCell + 2, zCell);
        step(number, node, yCell, zCell - 2);
        step(number, node, yCell, zCell + 2);
    }

    private void step(int number, Node node, int yCell, int zCell) {
        if (!room.holds(yCell, zCell)) {
            return;
        }
        Rows rows = rows(node.layer());
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
                int target = Flood.holding(rows.intervals(to), between[2 * i], between[2 * i + 1]);
                enter(node.layer(), to, target, x, node.gone() + Math.abs((long) x - node.x()) + across, number);
            }
        }
    }

    private void turn(int number, Node node) {
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
                    int target = Flood.holding(rows(layer).intervals(node.cell()), free[2 * i], free[2 * i + 1]);
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
        Layer own = layers.get(layer);
        Box goal = own == null ? null : own.goal();
        long left = goal == null ? 0 : Math.max(0, Math.max((long) goal.x0() - x, (long) x - goal.x1()));
        open.add(gone + TOWARDS_GOAL * left, number);
    }

    private boolean reaches(Node node) {
        Layer layer = layers.get(node.layer());
        Box goal = layer == null ? null : layer.goal();
        if (layer == null || goal == null) {
            return false;
        }
        int y = y(node);
        int z = z(node);
        int[] own = layer.rows().intervals(node.cell());
        return y >= goal.y0()
                && y <= goal.y1()
                && z >= goal.z0()
                && z <= goal.z1()
                && own[2 * node.interval()] <= goal.x1()
                && own[2 * node.interval() + 1] >= goal.x0();
    }

    private List<Stage> path(int last) {
        List<Stage> back = new ArrayList<>();
        Node end = nodes.get(last);
        Layer layer = layers.get(end.layer());
        Box goal = layer == null ? null : layer.goal();
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
        return ys.level(room.yCell(node.cell()) / 2);
    }

    private int z(Node node) {
        return zs.level(room.zCell(node.cell()) / 2);
    }

    private static void add(List<Stage> path, Stage stage) {
        if (path.isEmpty() || !path.get(path.size() - 1).equals(stage)) {
            path.add(stage);
        }
    }

    /** The obstacles of a layer that bound what was reached in it. */
    BitSet frontier(int layer) {
        long[] bounding = rows(layer).noObstacles();
        for (Node node : nodes) {
            if (node.layer() == layer) {
                Flood.markAround(rows(layer), node.cell(), node.interval(), bounding);
            }
        }
        return BitSet.valueOf(bounding);
    }

    /** The least cuboid of shifts that holds all that was reached, in any layer. */
    Box reached() {
        Box hull = null;
        for (Node node : nodes) {
            int[] own = rows(node.layer()).intervals(node.cell());
            int y = y(node);
            int z = z(node);
            Box one = new Box(own[2 * node.interval()], y, z, own[2 * node.interval() + 1], y, z);
            hull = hull == null ? one : hull.hull(one);
        }
        if (hull == null) {
            throw new IllegalStateException("Nothing was reached.");
        }
        return hull;
    }
}

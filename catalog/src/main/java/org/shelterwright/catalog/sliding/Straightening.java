package org.shelterwright.catalog.sliding;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;

/** Pulls a way straight: many small moves are replaced by few, each of which is checked against everything in the way. */
final class Straightening {
    private static final int[][] ORDERS = {{0, 1, 2}, {0, 2, 1}, {1, 0, 2}, {1, 2, 0}, {2, 0, 1}, {2, 1, 0}};

    private final List<@Nullable SlideSpace> layers;

    /** @param layers free space by quarters */
    Straightening(List<@Nullable SlideSpace> layers) {
        this.layers = layers;
    }

    /** The way with as few moves as can be had by shortcuts; the first and last stage stay. */
    List<Stage> of(List<Stage> way, BitSet gone) {
        List<Stage> stages = new ArrayList<>(way);
        for (int from = 0; from < stages.size() - 2; from++) {
            for (int to = stages.size() - 1; to > from + 1; to--) {
                Optional<List<Stage>> direct = direct(stages.get(from), stages.get(to), gone);
                if (direct.isPresent() && direct.get().size() < to - from) {
                    List<Stage> inside = stages.subList(from + 1, to);
                    inside.clear();
                    stages.addAll(from + 1, direct.get());
                    break;
                }
            }
        }
        return merged(stages);
    }

    /** The stages between two, by at most one move on each axis; empty if something is in the way of all of them. */
    private Optional<List<Stage>> direct(Stage from, Stage to, BitSet gone) {
        if (from.quarters() != to.quarters()) {
            return Optional.empty();
        }
        for (int[] order : ORDERS) {
            List<Stage> between = new ArrayList<>();
            Point at = from.shift();
            boolean clear = true;
            for (int i = 0; i < 3 && clear; i++) {
                Axis axis = Axis.values()[order[i]];
                int way = to.shift().along(axis) - at.along(axis);
                clear = way == 0 || clear(from.quarters(), at, axis, way, gone);
                at = at.with(axis, to.shift().along(axis));
                if (way != 0 && !at.equals(to.shift())) {
                    between.add(new Stage(from.quarters(), at));
                }
            }
            if (clear) {
                return Optional.of(between);
            }
        }
        return Optional.empty();
    }

    /** Whether no forbidden cuboid is met on the open line of shifts. */
    private boolean clear(int quarters, Point at, Axis axis, int way, BitSet gone) {
        SlideSpace space = layers.get(quarters);
        Box line = Box.between(at, at).swept(axis, way);
        if (space == null || !space.domain().contains(line)) {
            return false;
        }
        for (Obstacle obstacle : space.forbidden()) {
            boolean there = obstacle.owner() == Obstacle.FIXED || !gone.get(obstacle.owner());
            if (there && meets(obstacle.box(), line)) {
                return false;
            }
        }
        return true;
    }

    private static boolean meets(Box open, Box line) {
        return open.x0() < line.x1()
                && line.x0() < open.x1()
                && open.y0() < line.y1()
                && line.y0() < open.y1()
                && open.z0() < line.z1()
                && line.z0() < open.z1();
    }

    /** Leaves out stages that lie on the line between their neighbours. */
    static List<Stage> merged(List<Stage> stages) {
        List<Stage> kept = new ArrayList<>();
        for (Stage stage : stages) {
            int size = kept.size();
            if (size >= 2 && sameLine(kept.get(size - 2), kept.get(size - 1), stage)) {
                kept.set(size - 1, stage);
            } else {
                kept.add(stage);
            }
        }
        return kept;
    }

    private static boolean sameLine(Stage a, Stage b, Stage c) {
        return a.quarters() == b.quarters()
                && b.quarters() == c.quarters()
                && sameLine(a.shift(), b.shift(), c.shift());
    }

    private static boolean sameLine(Point a, Point b, Point c) {
        boolean x = a.y() == b.y() && b.y() == c.y() && a.z() == b.z() && b.z() == c.z();
        boolean y = a.x() == b.x() && b.x() == c.x() && a.z() == b.z() && b.z() == c.z();
        boolean z = a.x() == b.x() && b.x() == c.x() && a.y() == b.y() && b.y() == c.y();
        boolean onward = (long) (b.x() - a.x()) * (c.x() - b.x())
                        + (long) (b.y() - a.y()) * (c.y() - b.y())
                        + (long) (b.z() - a.z()) * (c.z() - b.z())
                >= 0;
        return (x || y || z) && onward;
    }
}

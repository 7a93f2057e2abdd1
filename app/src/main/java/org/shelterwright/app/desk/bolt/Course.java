package org.shelterwright.app.desk.bolt;

import java.util.List;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.sliding.Stage;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.ways.Passage;

/**
 * The way in of a unit, from the outside to its place.
 *
 * @param passage the way; it may be that there is none: the unit then is at its place all the time
 */
record Course(Passage passage) {
    /** Way for which a turn stands while time goes on (µm). */
    private static final long TURN = 500_000;

    /** The pose of the unit after a share of its way, from 0 to 1. */
    Pose pose(double along) {
        Pose place = passage.unit().pose(Situation.ON_STATION);
        if (!passage.free() || along >= 1 || passage.stages().size() < 2) {
            return place;
        }
        double left = (1 - along) * length();
        List<Stage> stages = passage.stages();
        for (int i = 1; i < stages.size(); i++) {
            long leg = leg(i);
            if (left <= leg || i == stages.size() - 1) {
                double share = leg == 0 ? 0 : Math.min(1, left / leg);
                boolean turning = !stages.get(i).slidesTo(stages.get(i - 1));
                int from = turning && share > 0.5 ? i : i - 1;
                Point way = stages.get(i).shift().minus(stages.get(i - 1).shift());
                Point part = turning ? Point.ORIGIN : scaled(way, share);
                return at(from).moved(part);
            }
            left -= leg;
        }
        return place;
    }

    /** Way in all, turns counted as some of it (µm). */
    long length() {
        long length = 0;
        for (int i = 1; i < passage.stages().size(); i++) {
            length += leg(i);
        }
        return length;
    }

    /** What it does last to get to its place, in words such as "slides 825 to the left"; empty if there is no way. */
    String lastWords() {
        return passage.stages().size() < 2 ? "" : words(1);
    }

    private String words(int leg) {
        Stage inner = passage.stages().get(leg - 1);
        Stage outer = passage.stages().get(leg);
        if (inner.lying() != outer.lying()) {
            return "stands up";
        }
        if (inner.quarters() != outer.quarters()) {
            return "turns by 90°";
        }
        Point way = inner.shift().minus(outer.shift());
        for (Axis axis : Axis.values()) {
            int length = way.along(axis);
            if (length != 0) {
                return words(axis, length);
            }
        }
        return "";
    }

    private static String words(Axis axis, int length) {
        long mm = Math.round(Math.abs(length) / 1000.0);
        return switch (axis) {
            case X -> "slides " + mm + (length > 0 ? " forward" : " to the rear");
            case Y -> "slides " + mm + (length > 0 ? " to the left" : " to the right");
            case Z -> (length > 0 ? "lifted " : "lowered ") + mm;
        };
    }

    private long leg(int i) {
        Stage inner = passage.stages().get(i - 1);
        Stage outer = passage.stages().get(i);
        Point way = outer.shift().minus(inner.shift());
        long length = Math.abs((long) way.x()) + Math.abs((long) way.y()) + Math.abs((long) way.z());
        return inner.slidesTo(outer) ? length : length + TURN;
    }

    private Pose at(int stage) {
        Pose place = passage.unit().pose(Situation.ON_STATION);
        Stage now = passage.stages().get(stage);
        if (now.quarters() == 0) {
            return place.moved(now.shift());
        }
        QuarterTurn yaw = place.yaw();
        for (int i = 0; i < now.quarters(); i++) {
            yaw = yaw.plus(QuarterTurn.R90);
        }
        List<Box> solids = passage.legs().get(stage);
        Point low = new Point(
                solids.stream().mapToInt(Box::x0).min().orElse(0),
                solids.stream().mapToInt(Box::y0).min().orElse(0),
                solids.stream().mapToInt(Box::z0).min().orElse(0));
        return new Pose(low, yaw);
    }

    private static Point scaled(Point way, double share) {
        return new Point((int) Math.round(way.x() * share), (int) Math.round(way.y() * share), (int)
                Math.round(way.z() * share));
    }
}

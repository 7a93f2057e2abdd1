package org.shelterwright.catalog.builtin;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.HoleGrid;
import org.shelterwright.catalog.item.Fixing;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.catalog.space.Size;

/** Finds by trying whether all fixings of an item can land on hard points of a body at once. */
final class Landing {
    private static final int STEP = 50 * Lengths.MM;

    private final Item item;
    private final Body body;

    Landing(Item item, Body body) {
        this.item = item;
        this.body = body;
    }

    boolean possible() {
        return item.turns().stream()
                .anyMatch(turn -> item.mounting().surfaces().stream().anyMatch(surface -> possible(turn, surface)));
    }

    private boolean possible(QuarterTurn turn, Surface surface) {
        Size turned = turn.apply(item.size());
        Set<Integer> xs = starts(Axis.X, turn, turned);
        Set<Integer> ys = starts(Axis.Y, turn, turned);
        for (int z : heights(surface)) {
            for (int x : xs) {
                for (int y : ys) {
                    Pose pose = new Pose(new Point(x, y, z), turn);
                    if (body.inside().box().contains(pose.outline(item.size()))
                            && (surface != Surface.WALL || backOnWall(pose))
                            && item.fixings().stream().allMatch(fixing -> lands(fixing, pose))) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    /** Places along an axis: on a raster, against both ends, and with the first fixing on each hole. */
    private Set<Integer> starts(Axis axis, QuarterTurn turn, Size turned) {
        Set<Integer> starts = new TreeSet<>();
        int room = body.inside().along(axis) - turned.along(axis);
        for (int at = 0; at <= room; at += STEP) {
            starts.add(at);
            starts.add(room - at);
        }
        int fixing = turn.apply(item.fixings().get(0).at(), item.size()).along(axis);
        for (HoleGrid grid : body.grids()) {
            if (axis == grid.along() || axis == grid.across()) {
                int count = axis == grid.along() ? grid.count() : grid.rows();
                for (int i = 0; i < count; i++) {
                    Point hole = axis == grid.along() ? grid.hole(i, 0) : grid.hole(0, i);
                    starts.add(hole.along(axis) - fixing);
                }
            }
        }
        starts.removeIf(at -> at < 0 || at > room);
        return starts;
    }

    private List<Integer> heights(Surface surface) {
        Integer lowest = item.mounting().lowestAbove();
        Integer highest = item.mounting().highestAbove();
        return switch (surface) {
            case FLOOR -> List.of(0);
            case ROOF -> List.of(body.inside().z() - item.size().z());
            case WALL ->
                List.of(
                        lowest == null ? 0 : lowest,
                        highest == null ? body.inside().z() - item.size().z() : highest);
            case ON_UNIT, UNDER_UNIT -> List.of();
        };
    }

    private boolean backOnWall(Pose pose) {
        Face back = pose.apply(Face.REAR);
        return pose.outline(item.size()).face(back).low(back.axis())
                == body.inside().box().face(back).low(back.axis());
    }

    private boolean lands(Fixing fixing, Pose pose) {
        Point at = pose.apply(fixing.at(), item.size());
        Face face = pose.apply(fixing.face());
        return body.hardPoints().stream().anyMatch(point -> point.takes(at, face, fixing.thread()));
    }
}

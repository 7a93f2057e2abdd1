package org.shelterwright.app.desk.hand;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.layouts.ledger.fit.MountFace;
import org.shelterwright.layouts.ledger.fit.Rest;
import org.shelterwright.layouts.scene.PlacedUnit;

/**
 * Finds where the leader of a drag is caught: first a place where every fixing lands on a hard point, then on each axis
 * that this leaves open the nearest face, wall or stop, then the grid. Exact and without a memory: the same wish always
 * gives the same place.
 */
final class Snapping {
    private final Moving moving;
    private final Catching catching;
    private final Holes holes;
    private final List<Neighbour> neighbours;
    private final Axis across;
    private final Optional<Box> room;
    private final Box filled;
    private final Point low;

    /**
     * A place, and why.
     *
     * @param at low corner of the leader
     */
    record Caught(Point at, List<Catch> catches) {}

    Snapping(Moving moving, Catching catching) {
        this.moving = moving;
        this.catching = catching;
        PlacedUnit leader = moving.leader();
        Situation situation = moving.situation();
        low = leader.pose(situation).at();
        filled = Neighbour.filled(leader, situation);
        holes = new Holes(moving);
        neighbours = Neighbour.of(moving);
        across = MountFace.of(leader.place(situation)).axis();
        room = Rest.of(moving.scene(), leader, situation)
                .flatMap(rest -> Rest.room(leader, situation, rest.support()))
                .map(rect -> level(rect, leader.pose(situation).at().z()));
    }

    /** The axis square to the surface. */
    Axis across() {
        return across;
    }

    /** The axes along the surface. */
    Set<Axis> along() {
        Set<Axis> along = EnumSet.allOf(Axis.class);
        along.remove(across);
        return along;
    }

    List<Neighbour> neighbours() {
        return neighbours;
    }

    /** A place as near as the host of the leader has room for it; the place itself on a surface of the body. */
    Point within(Point wanted) {
        return room.map(box -> clamped(wanted, box)).orElse(wanted);
    }

    /** The nearest place at which every fixing lands; the place itself if there is none within the tolerance. */
    Point landing(Point at) {
        Box window = window(at, along());
        return holes.nearest(at, window).map(box -> clamped(at, box)).orElse(at);
    }

    /**
     * Catches a wish.
     *
     * @param asked wanted place of the leader's low corner
     * @param free axes on which it may be caught; on the others it stays as asked
     */
    Caught at(Point asked, Set<Axis> free) {
        Point wanted = within(asked);
        List<Catch> catches = new ArrayList<>();
        Box window = window(wanted, free);
        Point at = wanted;
        Optional<Box> landing = holes.nearest(wanted, window);
        if (landing.isPresent()) {
            window = landing.get();
            at = clamped(wanted, window);
        }
        for (Axis axis : Axis.values()) {
            if (window.extent(axis) > 0) {
                at = at.with(axis, stop(axis, at, wanted, window, catches));
            }
        }
        if (landing.isPresent()) {
            holes.caught(at).ifPresent(found -> catches.add(0, found));
        }
        return new Caught(at, catches);
    }

    private int stop(Axis axis, Point at, Point wanted, Box window, List<Catch> catches) {
        int wish = wanted.along(axis);
        int inset = filled.low(axis) - low.along(axis);
        Box moved = filled(at);
        List<Stop> stops = Stop.along(axis, across, moving, neighbours, moved.extent(axis), moved, inset);
        int least = window.low(axis);
        int most = window.high(axis);
        Optional<Stop> found = Stop.nearest(stops, wish + inset, catching.tolerance(), least + inset, most + inset);
        if (found.isPresent()) {
            Stop stop = found.get();
            int caught = stop.at() - inset;
            Box there = filled(at.with(axis, caught));
            catches.add(new Catch(stop.kind(), there.face(stop.face()).centre(), stop.words(), stop.faces()));
            return caught;
        }
        int line = line(wish, catching.grid());
        if (catching.grid() > 0 && Math.abs(line - wish) <= catching.tolerance() && least <= line && line <= most) {
            catches.add(new Catch(Catch.Kind.GRID, at.with(axis, line), "grid", List.of()));
            return line;
        }
        return at.along(axis);
    }

    private static int line(int wish, int step) {
        return step == 0 ? wish : Math.floorDiv(wish + step / 2, step) * step;
    }

    /** What the leader fills with its low corner at a place. */
    Box filled(Point at) {
        return filled.moved(at.minus(low));
    }

    private Box window(Point wanted, Set<Axis> free) {
        int tolerance = catching.tolerance();
        Box window = Box.between(wanted, wanted)
                .grown(
                        free.contains(Axis.X) ? tolerance : 0,
                        free.contains(Axis.Y) ? tolerance : 0,
                        free.contains(Axis.Z) ? tolerance : 0);
        return room.map(window::intersection).orElse(window);
    }

    private static Box level(Rect rect, int z) {
        return rect.at(z, z);
    }

    private static Point clamped(Point point, Box box) {
        return new Point(
                Holes.clamped(box, Axis.X, point.x()),
                Holes.clamped(box, Axis.Y, point.y()),
                Holes.clamped(box, Axis.Z, point.z()));
    }
}

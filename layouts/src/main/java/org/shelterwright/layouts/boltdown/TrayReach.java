package org.shelterwright.layouts.boltdown;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.OptionalDouble;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.cable.LaidWire;
import org.shelterwright.layouts.cable.RouteShape;
import org.shelterwright.layouts.cable.TrayPath;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * Whether the trays of a wire can be reached to lay it. A tray is looked at every tool width: there a hand gets in if there is room
 * for a forearm below, above or beside it, in the body and free of units. From there a hand reaches along the tray as far as a
 * tool does. A closed duct is entered at its ends only.
 */
final class TrayReach {
    private final Scene scene;
    private final int reach;
    private final int width;
    private final int depth;

    TrayReach(Scene scene) {
        this.scene = scene;
        this.reach = micrometres(scene.rules().value(Figure.TOOL_REACH));
        this.width = micrometres(scene.rules().value(Figure.TOOL_WIDTH));
        this.depth = micrometres(scene.rules().value(Figure.TOOL_DEPTH));
    }

    private static int micrometres(OptionalDouble mm) {
        return (int) Math.round(1000 * mm.orElse(0));
    }

    /** Whether every part of its trays can be reached past the units that are in; true if the rules do not set the figures. */
    boolean reached(LaidWire wire, BitSet in) {
        RouteShape shape = wire.shape();
        return shape == null
                || width == 0
                || shape.stretches().stream().allMatch(one -> reached(one.tray(), one.from(), one.to(), in));
    }

    private boolean reached(TrayPath tray, int from, int to, BitSet in) {
        if (tray.tray().closed()) {
            return open(tray, 0, in) && open(tray, tray.length(), in);
        }
        int last = from - reach;
        for (int station = from; station < to + width; station += width) {
            int at = Math.min(station, to);
            if (open(tray, at, in)) {
                if (at - last > 2 * reach) {
                    return false;
                }
                last = at;
            }
        }
        return to - last <= reach;
    }

    /** Whether a hand gets to a tray at a station. */
    private boolean open(TrayPath tray, int station, BitSet in) {
        Box inside = scene.body().inside().box();
        for (Box room : rooms(tray, station)) {
            if (inside.contains(room) && free(room, in)) {
                return true;
            }
        }
        return false;
    }

    private List<Box> rooms(TrayPath tray, int station) {
        Point at = tray.at(station);
        Point before = tray.at(Math.max(0, station - width / 2));
        Point after = tray.at(Math.min(tray.length(), station + width / 2));
        int halfWidth = tray.tray().width() / 2;
        int halfDepth = tray.tray().depth() / 2;
        Box own = Box.between(before, after);
        boolean upright = before.z() != after.z();
        boolean alongX = before.x() != after.x();
        Box filled = new Box(
                own.x0() - (alongX ? 0 : halfWidth),
                own.y0() - (alongX || upright ? halfWidth : 0),
                own.z0() - (upright ? 0 : halfDepth),
                own.x1() + (alongX ? 0 : halfWidth),
                own.y1() + (alongX || upright ? halfWidth : 0),
                own.z1() + (upright ? 0 : halfDepth));
        List<Box> rooms = new ArrayList<>();
        for (Axis axis : Axis.values()) {
            if (before.along(axis) == after.along(axis) && at.along(axis) == before.along(axis)) {
                rooms.add(beside(filled, axis, filled.low(axis) - depth, filled.low(axis)));
                rooms.add(beside(filled, axis, filled.high(axis), filled.high(axis) + depth));
            }
        }
        return rooms;
    }

    private static Box beside(Box box, Axis axis, int low, int high) {
        return Box.between(box.low().with(axis, low), box.high().with(axis, high));
    }

    private boolean free(Box room, BitSet in) {
        for (PlacedUnit unit : scene.units()) {
            if (in.get(unit.index())
                    && unit.solids(Situation.ON_STATION).stream().anyMatch(room::overlaps)) {
                return false;
            }
        }
        return true;
    }
}

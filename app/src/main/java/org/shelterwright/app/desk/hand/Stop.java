package org.shelterwright.app.desk.hand;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.item.Mounting;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.layouts.ledger.fit.Rest;
import org.shelterwright.layouts.scene.PlacedUnit;

/**
 * A place on one axis that a face of the dragged unit catches at.
 *
 * @param at low corner of what the unit fills on that axis (µm)
 * @param face of the unit that catches
 * @param words what it then does, such as "touches Desk"
 * @param faces of the neighbour; empty if there is none
 */
record Stop(Catch.Kind kind, int at, Face face, String words, List<Box> faces) {
    /** Farther away than this, a unit's face is no guide for another (µm). */
    private static final int NEAR = 800 * Lengths.MM;

    /**
     * Every stop along an axis.
     *
     * @param across axis square to the surface along which the unit moves
     * @param extent of what the leader fills along the axis (µm)
     * @param seen what the leader would fill
     * @param inset of what it fills from its low corner (µm)
     */
    static List<Stop> along(
            Axis axis, Axis across, Moving moving, List<Neighbour> neighbours, int extent, Box seen, int inset) {
        List<Stop> stops = new ArrayList<>();
        for (Neighbour one : neighbours) {
            if (one.surface()) {
                if (one.box().extent(axis) == 0) {
                    touching(one, axis, extent, stops);
                }
            } else if (one.faces(seen, axis)) {
                touching(one, axis, extent, stops);
            } else if (!one.wall() && near(one.box(), seen, across)) {
                flush(one, axis, extent, stops);
            }
        }
        mountingStops(axis, moving, inset, stops);
        hostEdges(axis, moving, extent, stops);
        return stops;
    }

    /** The nearest to a place, within a tolerance and a range; of two alike the stronger, then the lower. */
    static Optional<Stop> nearest(List<Stop> stops, int wanted, int tolerance, int low, int high) {
        Stop best = null;
        for (Stop stop : stops) {
            int way = Math.abs(stop.at - wanted);
            if (way <= tolerance && low <= stop.at && stop.at <= high && (best == null || stop.before(best, wanted))) {
                best = stop;
            }
        }
        return Optional.ofNullable(best);
    }

    private boolean before(Stop other, int wanted) {
        int way = Integer.compare(Math.abs(at - wanted), Math.abs(other.at - wanted));
        int order = way != 0 ? way : kind.compareTo(other.kind);
        return order != 0 ? order < 0 : at < other.at;
    }

    private static void touching(Neighbour one, Axis axis, int extent, List<Stop> stops) {
        Box box = one.box();
        String words = "touches " + one.name();
        if (!one.surface() || box.low(axis) == 0) {
            stops.add(new Stop(one.kind(), box.high(axis), low(axis), words, List.of(box.face(high(axis)))));
        }
        if (!one.surface() || box.low(axis) > 0) {
            stops.add(new Stop(one.kind(), box.low(axis) - extent, high(axis), words, List.of(box.face(low(axis)))));
        }
    }

    private static void flush(Neighbour one, Axis axis, int extent, List<Stop> stops) {
        Box box = one.box();
        String words = "in line with " + one.name();
        stops.add(new Stop(one.kind(), box.low(axis), low(axis), words, List.of(box.face(low(axis)))));
        stops.add(new Stop(one.kind(), box.high(axis) - extent, high(axis), words, List.of(box.face(high(axis)))));
    }

    private static void mountingStops(Axis axis, Moving moving, int inset, List<Stop> stops) {
        PlacedUnit leader = moving.leader();
        if (axis != Axis.Z || leader.place(moving.situation()).surface() != Surface.WALL) {
            return;
        }
        Mounting mounting = leader.item().mounting();
        Integer least = mounting.lowestAbove();
        Integer most = mounting.highestAbove();
        if (least != null) {
            stops.add(new Stop(Catch.Kind.WALL, least + inset, Face.BOTTOM, "lowest mounting height", List.of()));
        }
        if (most != null) {
            stops.add(new Stop(Catch.Kind.WALL, most + inset, Face.BOTTOM, "highest mounting height", List.of()));
        }
    }

    private static void hostEdges(Axis axis, Moving moving, int extent, List<Stop> stops) {
        Rest.of(moving.scene(), moving.leader(), moving.situation()).ifPresent(rest -> {
            Box support = rest.support().box();
            if (axis != Axis.Z) {
                String words = "edge of " + rest.support().name() + ", "
                        + rest.support().host().name();
                stops.add(new Stop(Catch.Kind.FACE, support.low(axis), low(axis), words, List.of()));
                stops.add(new Stop(Catch.Kind.FACE, support.high(axis) - extent, high(axis), words, List.of()));
            }
        });
    }

    private static boolean near(Box one, Box other, Axis across) {
        for (Axis axis : Axis.values()) {
            if (one.gap(other, axis) > NEAR) {
                return false;
            }
        }
        return one.gap(other, across) < 0;
    }

    private static Face high(Axis axis) {
        return switch (axis) {
            case X -> Face.FRONT;
            case Y -> Face.LEFT;
            case Z -> Face.TOP;
        };
    }

    private static Face low(Axis axis) {
        return high(axis).opposite();
    }
}

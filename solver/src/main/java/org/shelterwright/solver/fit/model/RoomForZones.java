package org.shelterwright.solver.fit.model;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Size;

/**
 * Narrows anchors to those at which all clear zones have room in the body: nothing is searched where a unit could never be
 * worked at. Without it, a unit that faces a wall would be a place of rest for a search: its people stand beyond the wall
 * and are in nobody's way.
 */
final class RoomForZones {
    private final Size inside;
    private final BodyTerms terms;
    private final List<Opening> passages;

    RoomForZones(Body body) {
        this.inside = body.inside();
        this.terms = new BodyTerms(body);
        this.passages = terms.passages();
    }

    /**
     * The part of the regions at which the zones have room. In a rectangle, zones are taken by their hull, which may
     * reach through one opening.
     *
     * @param regions cuboids of anchors
     * @param shapes of the unit, one for each situation that it is in
     */
    List<Box> of(List<Box> regions, List<Shape> shapes) {
        List<Box> left = new ArrayList<>();
        for (Box region : regions) {
            if (region.low().equals(region.high())) {
                boolean room = shapes.stream()
                        .allMatch(shape -> terms.zonesInside(shape, region.x0(), region.y0(), region.z0()) == 0);
                if (room) {
                    left.add(region);
                }
            } else {
                left.addAll(rectangles(region, shapes));
            }
        }
        return left;
    }

    private List<Box> rectangles(Box region, List<Shape> shapes) {
        int[] hull = hull(shapes);
        if (hull == null) {
            return List.of(region);
        }
        List<Box> found = new ArrayList<>();
        add(found, region, room(hull, null));
        for (Opening opening : passages) {
            add(found, region, room(hull, opening));
        }
        return found;
    }

    private static void add(List<Box> found, Box region, int[] room) {
        int x0 = Math.max(region.x0(), room[0]);
        int y0 = Math.max(region.y0(), room[1]);
        int z0 = Math.max(region.z0(), room[2]);
        int x1 = Math.min(region.x1(), room[3]);
        int y1 = Math.min(region.y1(), room[4]);
        int z1 = Math.min(region.z1(), room[5]);
        if (x0 <= x1 && y0 <= y1 && z0 <= z1) {
            Box box = new Box(x0, y0, z0, x1, y1, z1);
            if (found.stream().noneMatch(other -> other.contains(box))) {
                found.add(box);
            }
        }
    }

    /** Bounds of the anchor: the hull lies inside, or within the width of an opening and then as far out as it likes. */
    private int[] room(int[] hull, @Nullable Opening through) {
        int[] room = {-hull[0], -hull[1], -hull[2], inside.x() - hull[3], inside.y() - hull[4], inside.z() - hull[5]};
        if (through != null) {
            Axis out = through.wall().axis();
            int a = out.ordinal();
            if (through.wall().sign() > 0) {
                room[3 + a] = Integer.MAX_VALUE;
            } else {
                room[a] = Integer.MIN_VALUE;
            }
            Axis along = out == Axis.X ? Axis.Y : Axis.X;
            int b = along.ordinal();
            room[b] = Math.max(room[b], through.area().low(along) - hull[b]);
            room[3 + b] = Math.min(room[3 + b], through.area().high(along) - hull[3 + b]);
            room[2] = Math.max(room[2], through.area().z0() - hull[2]);
            room[5] = Math.min(room[5], through.area().z1() - 1 - hull[2]);
        }
        return room;
    }

    private static int @Nullable [] hull(List<Shape> shapes) {
        int[] hull = null;
        for (Shape shape : shapes) {
            int[] zones = shape.zones();
            for (int i = 0; i < zones.length; i += 6) {
                if (hull == null) {
                    hull = java.util.Arrays.copyOfRange(zones, i, i + 6);
                }
                for (int k = 0; k < 3; k++) {
                    hull[k] = Math.min(hull[k], zones[i + k]);
                    hull[3 + k] = Math.max(hull[3 + k], zones[i + 3 + k]);
                }
            }
        }
        return hull;
    }
}

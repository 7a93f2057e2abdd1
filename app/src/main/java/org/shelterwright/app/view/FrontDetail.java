package org.shelterwright.app.view;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.MovablePart;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;

/**
 * What is drawn on the front of a solid, in the frame of its item: doors and drawers where its movable parts are, and
 * the lines by which a kind is known.
 */
final class FrontDetail {

    private static final int INSET = 22 * Lengths.MM;
    private static final int RACK_UNIT = 44_450;
    private static final int LEAST = 60 * Lengths.MM;

    private final Box solid;
    private final List<List<Point>> lines = new ArrayList<>();

    private FrontDetail(Box solid) {
        this.solid = solid;
    }

    /** The lines on a solid of an item. */
    static List<List<Point>> of(Item item, Box solid) {
        FrontDetail detail = new FrontDetail(solid);
        if (solid.extent(Axis.Y) < 3 * LEAST || solid.extent(Axis.Z) < 2 * LEAST) {
            return List.of();
        }
        boolean parts = false;
        for (MovablePart part : item.movableParts()) {
            parts |= detail.part(part);
        }
        switch (item.kind()) {
            case RACK -> detail.rackUnits(4 * RACK_UNIT);
            case CRATE -> detail.boards(150 * Lengths.MM);
            case BATTERY_BOX, STOWAGE_FRAME -> detail.lid(60 * Lengths.MM);
            case HEATER, GENERATOR, COOLER, POWER_UNIT -> detail.vents();
            case SCREEN -> detail.panel(INSET);
            case REFRIGERATOR, CUPBOARD, CABINET, LOCKER -> {
                if (!parts) {
                    detail.panel(INSET);
                }
            }
            default -> {}
        }
        return detail.lines;
    }

    /** A door or drawer that opens to the front, where its sweep meets the front. */
    private boolean part(MovablePart part) {
        Box s = part.sweep();
        int y0 = Math.max(s.y0(), solid.y0()) + INSET;
        int y1 = Math.min(s.y1(), solid.y1()) - INSET;
        int z0 = Math.max(s.z0(), solid.z0()) + INSET / 2;
        int z1 = Math.min(s.z1(), solid.z1()) - INSET / 2;
        if (s.x1() <= solid.x1() || y1 - y0 < LEAST || z1 - z0 < LEAST) {
            return false;
        }
        rectangle(y0, z0, y1, z1);
        int middle = (y0 + y1) / 2;
        if (part.kind() == MovablePart.Kind.DOOR) {
            int grip = (z0 + z1) / 2;
            line(y1 - 2 * INSET, grip - 2 * INSET, y1 - 2 * INSET, grip + 2 * INSET);
        } else {
            line(middle - 3 * INSET, z1 - 2 * INSET, middle + 3 * INSET, z1 - 2 * INSET);
        }
        return true;
    }

    private void rackUnits(int pitch) {
        int y0 = solid.y0() + 2 * INSET;
        int y1 = solid.y1() - 2 * INSET;
        int z0 = solid.z0() + 3 * INSET;
        int z1 = solid.z1() - 2 * INSET;
        rectangle(y0, z0, y1, z1);
        for (int z = z0 + pitch; z < z1; z += pitch) {
            line(y0, z, y1, z);
        }
    }

    private void boards(int pitch) {
        for (int z = solid.z0() + pitch; z < solid.z1() - INSET; z += pitch) {
            around(z);
        }
    }

    private void lid(int below) {
        around(solid.z1() - below);
    }

    /** A line around the whole solid, one piece a face. */
    private void around(int z) {
        List<Point> ring = List.of(
                new Point(solid.x0(), solid.y0(), z),
                new Point(solid.x1(), solid.y0(), z),
                new Point(solid.x1(), solid.y1(), z),
                new Point(solid.x0(), solid.y1(), z));
        for (int i = 0; i < ring.size(); i++) {
            lines.add(List.of(ring.get(i), ring.get((i + 1) % ring.size())));
        }
    }

    private void vents() {
        int z0 = solid.z0() + (solid.z1() - solid.z0()) / 3;
        int z1 = solid.z1() - 2 * INSET;
        for (int y = solid.y0() + 3 * INSET; y <= solid.y1() - 3 * INSET; y += 2 * INSET) {
            line(y, z0, y, z1);
        }
    }

    private void panel(int inset) {
        rectangle(solid.y0() + inset, solid.z0() + inset, solid.y1() - inset, solid.z1() - inset);
    }

    private void rectangle(int y0, int z0, int y1, int z1) {
        int x = solid.x1();
        lines.add(List.of(
                new Point(x, y0, z0),
                new Point(x, y1, z0),
                new Point(x, y1, z1),
                new Point(x, y0, z1),
                new Point(x, y0, z0)));
    }

    private void line(int y0, int z0, int y1, int z1) {
        lines.add(List.of(new Point(solid.x1(), y0, z0), new Point(solid.x1(), y1, z1)));
    }
}

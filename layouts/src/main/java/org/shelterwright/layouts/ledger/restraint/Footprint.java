package org.shelterwright.layouts.ledger.restraint;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.item.Item;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.layouts.scene.PlacedUnit;

/** Where a unit touches what it is mounted on. */
final class Footprint {
    private Footprint() {}

    /** Corners of its contact patches, or of the sides of its solids that reach the mounting face; frame of the body. */
    static List<Point> of(PlacedUnit unit, Face mount) {
        Item item = unit.item();
        List<Point> corners = new ArrayList<>();
        if (mount == Face.BOTTOM) {
            for (Rect print : item.prints()) {
                add(unit.pose(Situation.ON_THE_ROAD).apply(print.at(0, 0), item.size()), mount, corners);
            }
            return corners;
        }
        Box outline = unit.outline(Situation.ON_THE_ROAD);
        for (Box solid : unit.solids(Situation.ON_THE_ROAD)) {
            if (level(solid, mount) == level(outline, mount)) {
                add(solid, mount, corners);
            }
        }
        return corners;
    }

    private static int level(Box box, Face face) {
        return face.sign() > 0 ? box.high(face.axis()) : box.low(face.axis());
    }

    private static void add(Box box, Face mount, List<Point> corners) {
        Box face = box.face(mount);
        for (int i = 0; i < 8; i++) {
            Point corner = new Point(
                    (i & 1) == 0 ? face.x0() : face.x1(),
                    (i & 2) == 0 ? face.y0() : face.y1(),
                    (i & 4) == 0 ? face.z0() : face.z1());
            if (!corners.contains(corner)) {
                corners.add(corner);
            }
        }
    }
}

package org.shelterwright.layouts.boltdown;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.ledger.mend.Wording;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * A dimension by which a unit is set: from an inside surface of the body to the near side of the unit.
 *
 * @param from the surface that is measured from
 * @param length (µm)
 * @param start on the surface
 * @param end on the unit
 */
public record Datum(Face from, int length, Point start, Point end) {
    /** The dimension in words, such as "2400 from the rear wall". */
    public String text() {
        return length == 0
                ? "against " + Wording.surface(from)
                : Lengths.format(length) + " from " + Wording.surface(from);
    }

    /** Two dimensions in plan, from the rear and the right wall or from one that it touches; and its height if it is not on the floor. */
    static List<Datum> of(Scene scene, PlacedUnit unit) {
        Box outline = unit.outline(Situation.ON_STATION);
        Box inside = scene.body().inside().box();
        List<Datum> datums = new ArrayList<>();
        datums.add(of(inside, outline, outline.x1() == inside.x1() ? Face.FRONT : Face.REAR));
        datums.add(of(inside, outline, outline.y1() == inside.y1() ? Face.LEFT : Face.RIGHT));
        if (outline.z1() == inside.z1() && outline.z0() != 0) {
            datums.add(of(inside, outline, Face.TOP));
        } else if (outline.z0() != 0) {
            datums.add(of(inside, outline, Face.BOTTOM));
        }
        return datums;
    }

    private static Datum of(Box inside, Box outline, Face from) {
        Axis axis = from.axis();
        int wall = from.sign() > 0 ? inside.high(axis) : inside.low(axis);
        int side = from.sign() > 0 ? outline.high(axis) : outline.low(axis);
        Point corner = new Point(outline.x0(), outline.y0(), outline.z0());
        return new Datum(from, Math.abs(side - wall), corner.with(axis, wall), corner.with(axis, side));
    }
}

package org.shelterwright.layouts.ledger.mend;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;

/**
 * A shift along one axis.
 *
 * @param way direction
 * @param length (µm), not below zero
 */
public record Shift(Face way, int length) {
    public Point vector() {
        return Point.ORIGIN.with(way.axis(), way.sign() * length);
    }

    /** Such as "38 mm forward". */
    public String words() {
        return Wording.mm(length) + " " + Wording.direction(way);
    }

    /** A shift along several axes in words, such as "12 mm forward and 5 mm to the left". */
    public static String words(Point vector) {
        List<String> parts = new ArrayList<>();
        for (Face way : Face.values()) {
            int length = vector.along(way.axis()) * way.sign();
            if (length > 0) {
                parts.add(new Shift(way, length).words());
            }
        }
        return Wording.list(parts);
    }
}

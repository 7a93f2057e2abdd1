package org.shelterwright.app.view;

import java.util.List;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;

/**
 * Where a flat view lies on a sheet.
 *
 * @param scale denominator of the scale, such as 20 for 1:20
 * @param origin where the origin of the body comes to lie on the sheet (mm)
 */
public record Sheeted(Aspect aspect, double scale, Spot origin) {

    /** A length of the body on paper (mm). */
    public double onPaper(int micrometres) {
        return micrometres / 1000.0 / scale;
    }

    public Spot spot(Point point) {
        return new Spot(origin.x() + onPaper(aspect.right(point)), origin.y() - onPaper(aspect.above(point)));
    }

    public Bounds bounds(Box box) {
        return Bounds.of(List.of(spot(box.low()), spot(box.high())));
    }
}

package org.shelterwright.app.view;

import java.util.List;
import org.shelterwright.app.drawing.Pen;
import org.shelterwright.catalog.space.Point;

/** A line in space, in the frame of the body. */
public record Trace(List<Point> points, Pen pen) {

    public Trace {
        points = List.copyOf(points);
    }
}

package org.shelterwright.app.view;

import java.util.List;
import org.shelterwright.app.drawing.Colour;
import org.shelterwright.catalog.space.Point;

/** A flat convex patch in space, in the frame of the body. */
public record Facet(List<Point> corners, Colour colour) {

    public Facet {
        corners = List.copyOf(corners);
    }
}

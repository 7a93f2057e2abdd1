package org.shelterwright.app.view;

import org.shelterwright.app.drawing.Spot;
import org.shelterwright.catalog.space.Point;

/** Where a place of the body comes to lie in a picture or on a screen. */
public interface Depiction {

    /** A place in the frame of the body, in the picture (mm of paper, y down). */
    Spot spot(Point point);
}

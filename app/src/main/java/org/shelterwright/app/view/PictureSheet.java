package org.shelterwright.app.view;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.app.drawing.Bounds;
import org.shelterwright.app.drawing.Drawing;
import org.shelterwright.app.drawing.Polygon;
import org.shelterwright.app.drawing.Shape;
import org.shelterwright.app.look.Role;

/**
 * A picture of a layout on paper: what it shows in space, how that comes onto the paper, and what is written over it.
 *
 * @param over names, marks and captions, in mm on paper
 */
public record PictureSheet(
        String title, double width, double height, Projection projection, PictureModel model, List<Shape> over) {

    public PictureSheet {
        over = List.copyOf(over);
    }

    /** The whole picture as shapes painted over each other. */
    public Drawing drawing() {
        List<Shape> shapes = new ArrayList<>();
        shapes.add(Polygon.of(new Bounds(0, 0, width, height), Role.VIEW.colour(), null));
        shapes.addAll(new OrderedPainting(projection).shapes(model));
        shapes.addAll(over);
        return new Drawing(title, width, height, shapes);
    }
}

package org.shelterwright.app.drawing;

import java.util.List;
import java.util.stream.Stream;

/**
 * A sheet of paper and what is on it.
 *
 * @param title what it shows, for readers of the file
 * @param width of the sheet (mm)
 * @param height of the sheet (mm)
 */
public record Drawing(String title, double width, double height, List<Shape> shapes) {

    public Drawing {
        shapes = List.copyOf(shapes);
    }

    public void onto(Canvas canvas) {
        shapes.forEach(shape -> shape.onto(canvas));
    }

    /** All texts, in drawing order. */
    public List<Label> labels() {
        return shapes.stream().flatMap(Drawing::labels).toList();
    }

    private static Stream<Label> labels(Shape shape) {
        if (shape instanceof Label label) {
            return Stream.of(label);
        }
        return shape instanceof Group group ? group.shapes().stream().flatMap(Drawing::labels) : Stream.empty();
    }
}

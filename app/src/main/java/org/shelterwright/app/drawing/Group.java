package org.shelterwright.app.drawing;

import java.util.List;

/** Shapes under one name; the groups of a drawing are its layers. */
public record Group(String name, List<Shape> shapes) implements Shape {

    public Group {
        shapes = List.copyOf(shapes);
    }

    @Override
    public void onto(Canvas canvas) {
        canvas.group(name, () -> shapes.forEach(shape -> shape.onto(canvas)));
    }

    @Override
    public Group moved(double dx, double dy) {
        return new Group(name, shapes.stream().map(shape -> shape.moved(dx, dy)).toList());
    }
}

package org.shelterwright.app.drawing;

import org.jspecify.annotations.Nullable;

/** A circle, filled, drawn or both. */
public record Circle(
        Spot centre,
        double radius,
        @Nullable Colour fill,
        @Nullable Pen pen) implements Shape {

    @Override
    public void onto(Canvas canvas) {
        canvas.circle(centre, radius, fill, pen);
    }

    @Override
    public Circle moved(double dx, double dy) {
        return new Circle(centre.plus(dx, dy), radius, fill, pen);
    }
}

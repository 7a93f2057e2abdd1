package org.shelterwright.app.drawing;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** A closed outline, filled, drawn or both. */
public record Polygon(
        List<Spot> corners, @Nullable Colour fill, @Nullable Pen pen) implements Shape {

    public Polygon {
        corners = List.copyOf(corners);
    }

    public static Polygon of(Bounds b, @Nullable Colour fill, @Nullable Pen pen) {
        return new Polygon(corners(b), fill, pen);
    }

    public static List<Spot> corners(Bounds b) {
        return List.of(
                new Spot(b.x0(), b.y0()), new Spot(b.x1(), b.y0()), new Spot(b.x1(), b.y1()), new Spot(b.x0(), b.y1()));
    }

    @Override
    public void onto(Canvas canvas) {
        canvas.polygon(corners, fill, pen);
    }

    @Override
    public Polygon moved(double dx, double dy) {
        return new Polygon(corners.stream().map(s -> s.plus(dx, dy)).toList(), fill, pen);
    }
}

package org.shelterwright.app.drawing;

import java.util.Collection;

/** An upright rectangle on paper (mm). */
public record Bounds(double x0, double y0, double x1, double y1) {

    public static Bounds around(Spot centre, double width, double height) {
        return new Bounds(
                centre.x() - width / 2, centre.y() - height / 2, centre.x() + width / 2, centre.y() + height / 2);
    }

    /** The least rectangle that holds all places; there must be one at least. */
    public static Bounds of(Collection<Spot> spots) {
        return new Bounds(
                spots.stream().mapToDouble(Spot::x).min().orElseThrow(),
                spots.stream().mapToDouble(Spot::y).min().orElseThrow(),
                spots.stream().mapToDouble(Spot::x).max().orElseThrow(),
                spots.stream().mapToDouble(Spot::y).max().orElseThrow());
    }

    public double width() {
        return x1 - x0;
    }

    public double height() {
        return y1 - y0;
    }

    public Spot centre() {
        return new Spot((x0 + x1) / 2, (y0 + y1) / 2);
    }

    /** Whether both share an area; touching is not overlapping. */
    public boolean overlaps(Bounds o) {
        return x0 < o.x1 && o.x0 < x1 && y0 < o.y1 && o.y0 < y1;
    }

    public boolean contains(Bounds o) {
        return x0 <= o.x0 && o.x1 <= x1 && y0 <= o.y0 && o.y1 <= y1;
    }

    public boolean contains(Spot spot) {
        return x0 <= spot.x() && spot.x() <= x1 && y0 <= spot.y() && spot.y() <= y1;
    }

    public Bounds grown(double by) {
        return new Bounds(x0 - by, y0 - by, x1 + by, y1 + by);
    }

    public Bounds hull(Bounds o) {
        return new Bounds(Math.min(x0, o.x0), Math.min(y0, o.y0), Math.max(x1, o.x1), Math.max(y1, o.y1));
    }

    public Bounds moved(double dx, double dy) {
        return new Bounds(x0 + dx, y0 + dy, x1 + dx, y1 + dy);
    }
}

package org.shelterwright.catalog.space;

/** A rectangle on a floor or another level face, in x and y (µm). */
public record Rect(int x0, int y0, int x1, int y1) {
    public Rect {
        Range.check("x", x0);
        Range.check("y", y0);
        Range.check("x", x1);
        Range.check("y", y1);
        if (x0 > x1 || y0 > y1) {
            throw new IllegalArgumentException("The low corner of a rectangle must not be above its high corner.");
        }
    }

    public static Rect of(Box box) {
        return new Rect(box.x0(), box.y0(), box.x1(), box.y1());
    }

    /** Takes whole millimetres. */
    public static Rect ofMm(int x0, int y0, int x1, int y1) {
        return of(Box.ofMm(x0, y0, 0, x1, y1, 0));
    }

    public Box at(int z0, int z1) {
        return new Box(x0, y0, z0, x1, y1, z1);
    }

    public boolean overlaps(Rect o) {
        return x0 < o.x1 && o.x0 < x1 && y0 < o.y1 && o.y0 < y1 && x0 < x1 && o.x0 < o.x1 && y0 < y1 && o.y0 < o.y1;
    }

    public boolean contains(Rect o) {
        return x0 <= o.x0 && o.x1 <= x1 && y0 <= o.y0 && o.y1 <= y1;
    }

    /** Area (m²). */
    public double areaM2() {
        return Lengths.metres(x1 - x0) * Lengths.metres(y1 - y0);
    }

    /** Area shared with another (m²). */
    public double sharedM2(Rect o) {
        int dx = Math.min(x1, o.x1) - Math.max(x0, o.x0);
        int dy = Math.min(y1, o.y1) - Math.max(y0, o.y0);
        return dx <= 0 || dy <= 0 ? 0 : Lengths.metres(dx) * Lengths.metres(dy);
    }
}

package org.shelterwright.app.desk.space.eye;

import java.util.Collection;
import javafx.geometry.Point3D;

/** A view that has a name. */
public enum FixedView {
    PICTORIAL("pictorial", 33, 37),
    ABOVE("from above", 0, 90),
    REAR("from the rear", 90, 0),
    FRONT("from the front", 270, 0),
    RIGHT("from the right", 0, 0),
    LEFT("from the left", 180, 0);

    private static final int MOST_STEPS = 20;

    private final String words;
    private final double azimuth;
    private final double height;

    FixedView(String words, double azimuth, double height) {
        this.words = words;
        this.azimuth = azimuth;
        this.height = height;
    }

    /** Such as "from the rear". */
    public String words() {
        return words;
    }

    /**
     * The view from this side that shows all places as large as it can.
     *
     * @param places at least one (mm)
     * @param margin room left at each edge (px)
     */
    public Eye of(Eye before, Collection<Point3D> places, double margin) {
        return fitted(before.turned(azimuth, height), places, margin);
    }

    /** The view from the same side that shows all places as large as it can. */
    public static Eye fitted(Eye eye, Collection<Point3D> places, double margin) {
        Eye flat = eye.withPerspective(false);
        double left = Double.POSITIVE_INFINITY;
        double top = Double.POSITIVE_INFINITY;
        double right = Double.NEGATIVE_INFINITY;
        double bottom = Double.NEGATIVE_INFINITY;
        Point3D low = null;
        Point3D high = null;
        for (Point3D place : places) {
            Eye.Seen seen = flat.project(place);
            left = Math.min(left, seen.x());
            right = Math.max(right, seen.x());
            top = Math.min(top, seen.y());
            bottom = Math.max(bottom, seen.y());
            low = low == null ? place : least(low, place);
            high = high == null ? place : greatest(high, place);
        }
        if (low == null || high == null) {
            return eye;
        }
        double share = Math.min(
                Math.max(40, eye.width() - 2 * margin) / Math.max(1e-6, right - left),
                Math.max(40, eye.high() - 2 * margin) / Math.max(1e-6, bottom - top));
        Eye fitted = fitted(eye, flat, share, (left + right) / 2, (top + bottom) / 2, low.midpoint(high));
        return eye.perspective() ? roomier(fitted, places, margin) : fitted;
    }

    private static Eye fitted(Eye eye, Eye flat, double share, double x, double y, Point3D middle) {
        Point3D across = flat.onPlane(x, y);
        double depth = flat.towards().dotProduct(middle.subtract(across));
        return new Eye(
                eye.azimuth(),
                eye.height(),
                across.add(flat.towards().multiply(depth)),
                eye.scale() * share,
                eye.perspective(),
                eye.width(),
                eye.high());
    }

    /** The same view, reduced until what perspective enlarges lies inside the margin too. */
    private static Eye roomier(Eye eye, Collection<Point3D> places, double margin) {
        Eye at = eye;
        for (int i = 0; i < MOST_STEPS && !inside(at, places, margin / 2); i++) {
            at = at.zoomed(at.width() / 2, at.high() / 2, 0.95);
        }
        return at;
    }

    private static boolean inside(Eye eye, Collection<Point3D> places, double margin) {
        return places.stream()
                .map(eye::project)
                .allMatch(seen -> seen.x() >= margin
                        && seen.x() <= eye.width() - margin
                        && seen.y() >= margin
                        && seen.y() <= eye.high() - margin);
    }

    private static Point3D least(Point3D a, Point3D b) {
        return new Point3D(Math.min(a.getX(), b.getX()), Math.min(a.getY(), b.getY()), Math.min(a.getZ(), b.getZ()));
    }

    private static Point3D greatest(Point3D a, Point3D b) {
        return new Point3D(Math.max(a.getX(), b.getX()), Math.max(a.getY(), b.getY()), Math.max(a.getZ(), b.getZ()));
    }
}

package org.shelterwright.app.desk.space.eye;

import javafx.geometry.Point3D;
import org.shelterwright.app.desk.hand.Ray;
import org.shelterwright.app.drawing.Spot;
import org.shelterwright.app.view.Axonometry;

/**
 * Where the viewer is and what lies in the middle of the view. Angles are those of {@link Axonometry}: R = (cos a, −sin a,
 * 0) to the right, V = (−sin a cos h, −cos a cos h, sin h) towards the viewer, U = V × R up. Immutable.
 *
 * <p>In perspective the eye stands so far from the target that a millimetre at the target is as large as in the parallel
 * view of the same scale; the plane through the target that faces the viewer looks the same in both.
 *
 * @param azimuth a (degrees)
 * @param height h, elevation of the line of sight above the floor (degrees), 0 to 90
 * @param target what lies in the middle of the view (mm, frame of the body)
 * @param scale pixels for a millimetre at the target
 * @param width of the view (px)
 * @param high height of the view (px)
 */
public record Eye(
        double azimuth, double height, Point3D target, double scale, boolean perspective, double width, double high) {
    /** Vertical angle of view in perspective (degrees). */
    public static final double ANGLE = 28;

    /** Scales between which the view stays (px for a mm): a wagon as a thumbnail, a bolt over the whole screen. */
    public static final double LEAST_SCALE = 0.01;

    public static final double MOST_SCALE = 20;

    /** From where a parallel line of sight begins, before the target (mm). */
    private static final double BEFORE = 100_000;

    private static final double NEAREST = 0.05;

    public Eye {
        azimuth = ((azimuth % 360) + 360) % 360;
        height = Math.max(0, Math.min(90, height));
        scale = Math.max(LEAST_SCALE, Math.min(MOST_SCALE, scale));
        width = Math.max(1, width);
        high = Math.max(1, high);
    }

    /** A place in the view (px, y down) and how far it is away; smaller is nearer. */
    public record Seen(double x, double y, double depth) {
        public Spot spot() {
            return new Spot(x, y);
        }
    }

    /** To the right in the view. */
    public Point3D right() {
        return new Point3D(cos(azimuth), -sin(azimuth), 0);
    }

    /** Upwards in the view. */
    public Point3D up() {
        return new Point3D(sin(azimuth) * sin(height), cos(azimuth) * sin(height), cos(height));
    }

    /** Towards the viewer. */
    public Point3D towards() {
        return new Point3D(-sin(azimuth) * cos(height), -cos(azimuth) * cos(height), sin(height));
    }

    /** Towards the viewer from a place: in perspective it differs from place to place. */
    public Point3D towards(Point3D from) {
        return perspective ? standing().subtract(from).normalize() : towards();
    }

    /** Distance of the eye from the target in perspective (mm). */
    public double distance() {
        return focal() / scale;
    }

    /** Brings a place of the body (mm) into the view. */
    public Seen project(Point3D place) {
        Point3D off = place.subtract(target);
        double near = towards().dotProduct(off);
        double size = perspective ? focal() / Math.max(NEAREST * distance(), distance() - near) : scale;
        return new Seen(width / 2 + right().dotProduct(off) * size, high / 2 - up().dotProduct(off) * size, -near);
    }

    /** Pixels for a millimetre at a place. */
    public double scaleAt(Point3D place) {
        double near = towards().dotProduct(place.subtract(target));
        return perspective ? focal() / Math.max(NEAREST * distance(), distance() - near) : scale;
    }

    /** The line of sight through a place of the view (px). */
    public Ray ray(double x, double y) {
        double across = x - width / 2;
        double upward = high / 2 - y;
        if (perspective) {
            Point3D direction = right().multiply(across)
                    .add(up().multiply(upward))
                    .subtract(towards().multiply(focal()));
            return new Ray(standing(), direction);
        }
        return new Ray(onPlane(x, y).add(towards().multiply(BEFORE)), towards().multiply(-1));
    }

    /** The place under a spot of the view (px) in the plane through the target that faces the viewer. */
    public Point3D onPlane(double x, double y) {
        return target.add(right().multiply((x - width / 2) / scale)).add(up().multiply((high / 2 - y) / scale));
    }

    /** The same view with another place in its middle. */
    public Eye at(Point3D other) {
        return new Eye(azimuth, height, other, scale, perspective, width, high);
    }

    public Eye sized(double newWidth, double newHigh) {
        return new Eye(azimuth, height, target, scale, perspective, newWidth, newHigh);
    }

    public Eye withPerspective(boolean other) {
        return new Eye(azimuth, height, target, scale, other, width, high);
    }

    public Eye turned(double newAzimuth, double newHeight) {
        return new Eye(newAzimuth, newHeight, target, scale, perspective, width, high);
    }

    /** Shifts the picture (px, y down). */
    public Eye panned(double dx, double dy) {
        return at(onPlane(width / 2 - dx, high / 2 - dy));
    }

    /** Enlarges about a spot (px): what lies under it in the plane of the target stays there. */
    public Eye zoomed(double x, double y, double factor) {
        Point3D fixed = onPlane(x, y);
        Eye near = new Eye(azimuth, height, target, scale * factor, perspective, width, high);
        return near.at(target.add(fixed.subtract(near.onPlane(x, y))));
    }

    /** Turns about a place (mm), which keeps its spot in the view. */
    public Eye orbited(Point3D pivot, double newAzimuth, double newHeight) {
        Point3D off = pivot.subtract(target);
        double x = right().dotProduct(off);
        double y = up().dotProduct(off);
        double near = towards().dotProduct(off);
        Eye turned = turned(newAzimuth, newHeight);
        return turned.at(pivot.subtract(turned.right().multiply(x))
                .subtract(turned.up().multiply(y))
                .subtract(turned.towards().multiply(near)));
    }

    /** The direction for what depends on which sides are seen. */
    public Axonometry axonometry() {
        return new Axonometry(azimuth, height);
    }

    private Point3D standing() {
        return target.add(towards().multiply(distance()));
    }

    private double focal() {
        return high / 2 / Math.tan(Math.toRadians(ANGLE / 2));
    }

    /** Exact at quarter turns, so that a square view sees no sliver of a side. */
    private static double sin(double degrees) {
        return degrees % 90 == 0 ? Math.rint(Math.sin(Math.toRadians(degrees))) : Math.sin(Math.toRadians(degrees));
    }

    private static double cos(double degrees) {
        return degrees % 90 == 0 ? Math.rint(Math.cos(Math.toRadians(degrees))) : Math.cos(Math.toRadians(degrees));
    }
}

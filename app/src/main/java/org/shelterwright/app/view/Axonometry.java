package org.shelterwright.app.view;

import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;

/**
 * A parallel view from above. With R = (cos a, −sin a, 0) to the right of the picture and V = (−sin a cos h, −cos a cos
 * h, sin h) towards the viewer, up in the picture is V × R. At a = 33° the viewer stands behind and to the right.
 *
 * @param azimuth a (degrees)
 * @param height h, elevation of the line of sight above the floor (degrees), 0 to 90
 */
public record Axonometry(double azimuth, double height) {

    public static final Axonometry FROM_REAR_RIGHT = new Axonometry(33, 37);
    public static final Axonometry FROM_FRONT_LEFT = new Axonometry(213, 37);

    /** A face turned away by less (sine of the angle) is seen edge on. */
    private static final double EDGE_ON = 1e-9;

    public Axonometry {
        if (!(height >= 0 && height <= 90)) {
            throw new IllegalArgumentException(
                    "A picture is taken from 0° to 90° above the floor, not " + height + "°.");
        }
    }

    /** To the right in the picture (µm). */
    public double across(Point p) {
        return cos() * p.x() - sin() * p.y();
    }

    /** Up in the picture (µm). */
    public double up(Point p) {
        return (sin() * p.x() + cos() * p.y()) * Math.sin(h()) + p.z() * Math.cos(h());
    }

    /** Away from the viewer (µm). */
    public double depth(Point p) {
        return (sin() * p.x() + cos() * p.y()) * Math.cos(h()) - p.z() * Math.sin(h());
    }

    /** Whether the outer side of a face of a solid looks towards the viewer. */
    public boolean sees(Face face) {
        return switch (face.axis()) {
            case X -> face.sign() * sin() < -EDGE_ON;
            case Y -> face.sign() * cos() < -EDGE_ON;
            case Z -> face.sign() > 0 && height > 0;
        };
    }

    private double sin() {
        return Math.sin(Math.toRadians(azimuth));
    }

    private double cos() {
        return Math.cos(Math.toRadians(azimuth));
    }

    private double h() {
        return Math.toRadians(height);
    }
}

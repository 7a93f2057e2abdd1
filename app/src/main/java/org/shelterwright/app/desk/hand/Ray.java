package org.shelterwright.app.desk.hand;

import java.util.Optional;
import javafx.geometry.Point3D;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;

/**
 * A line of sight, from the eye into the body.
 *
 * @param origin in the frame of the body (mm)
 * @param direction in the frame of the body, of any length but not zero
 */
public record Ray(Point3D origin, Point3D direction) {
    /** Less than this share of the direction along an axis: the plane square to it is seen edge on. */
    private static final double EDGE_ON = 0.02;

    public Ray {
        direction = direction.normalize();
    }

    /**
     * Where it passes through a plane.
     *
     * @param across axis square to the plane
     * @param at place of the plane on it (mm)
     * @return place (mm); empty if the plane is seen edge on
     */
    public Optional<Point3D> through(Axis across, double at) {
        double speed = along(direction, across);
        if (Math.abs(speed) < EDGE_ON) {
            return Optional.empty();
        }
        return Optional.of(origin.add(direction.multiply((at - along(origin, across)) / speed)));
    }

    /** Where it enters a cuboid (mm); empty if it passes by, or begins inside or beyond it. */
    public Optional<Point3D> into(Box box) {
        double enter = 0;
        double leave = Double.POSITIVE_INFINITY;
        for (Axis axis : Axis.values()) {
            double speed = along(direction, axis);
            double low = box.low(axis) / 1e3 - along(origin, axis);
            double high = box.high(axis) / 1e3 - along(origin, axis);
            if (speed == 0) {
                if (low > 0 || high < 0) {
                    return Optional.empty();
                }
            } else {
                enter = Math.max(enter, Math.min(low / speed, high / speed));
                leave = Math.min(leave, Math.max(low / speed, high / speed));
            }
        }
        return enter <= leave && enter > 0 ? Optional.of(origin.add(direction.multiply(enter))) : Optional.empty();
    }

    static double along(Point3D point, Axis axis) {
        return switch (axis) {
            case X -> point.getX();
            case Y -> point.getY();
            case Z -> point.getZ();
        };
    }
}

package org.shelterwright.app.desk.space.eye;

import javafx.geometry.Point3D;

/** A move of the eye from one view to another, slowing down towards its end. The shorter way round. */
public record EyeMove(Eye from, Eye to) {
    /** How long it takes (ms); none with reduced motion. */
    public static final double MILLIS = 260;

    /**
     * The view on the way.
     *
     * @param share of the time that has passed, 0 to 1
     */
    public Eye at(double share) {
        if (share >= 1) {
            return to;
        }
        double way = 1 - Math.pow(1 - Math.max(0, share), 3);
        double turn = ((to.azimuth() - from.azimuth() + 540) % 360) - 180;
        Point3D target = from.target().add(to.target().subtract(from.target()).multiply(way));
        return new Eye(
                from.azimuth() + turn * way,
                from.height() + (to.height() - from.height()) * way,
                target,
                from.scale() * Math.pow(to.scale() / from.scale(), way),
                to.perspective(),
                to.width(),
                to.high());
    }
}

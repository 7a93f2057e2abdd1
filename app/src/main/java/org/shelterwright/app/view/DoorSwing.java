package org.shelterwright.app.view;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;

/**
 * The quarter circle that the leaf of an outward opening door sweeps on the ground. The side of the hinge is not part of
 * the data; it is drawn at the right or rear jamb, and documents say so.
 */
public final class DoorSwing {

    private static final int STEPS = 18;

    private DoorSwing() {}

    /** Where the hinge is drawn, at floor height on the outside of the wall. */
    public static Point hinge(Body body, Opening door) {
        Face wall = door.wall();
        Box outside = body.outside();
        int at = wall.sign() > 0 ? outside.high(wall.axis()) : outside.low(wall.axis());
        return door.area().low().with(wall.axis(), at).with(Axis.Z, 0);
    }

    /** From the closed to the open leaf. */
    public static List<Point> arc(Body body, Opening door) {
        Face wall = door.wall();
        Axis across = wall.axis() == Axis.X ? Axis.Y : Axis.X;
        Point hinge = hinge(body, door);
        int radius = door.area().extent(across);
        List<Point> arc = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double turn = Math.PI / 2 * i / STEPS;
            int out = (int) Math.round(radius * Math.sin(turn));
            int side = (int) Math.round(radius * Math.cos(turn));
            arc.add(hinge.with(across, hinge.along(across) + side)
                    .with(wall.axis(), hinge.along(wall.axis()) + wall.sign() * out));
        }
        return arc;
    }
}

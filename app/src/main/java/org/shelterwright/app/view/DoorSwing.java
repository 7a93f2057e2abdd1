package org.shelterwright.app.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.body.Body;
import org.shelterwright.catalog.body.Opening;
import org.shelterwright.catalog.item.MovablePart;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.layouts.scene.PlacedUnit;

/**
 * The quarter circle that a leaf sweeps on the ground: of a door of the body, or of a unit. Where the side of the hinge is not
 * known, an outward opening door of the body is drawn hung at the right or rear jamb, and documents say so.
 *
 * @param hinge at floor height
 * @param arc from the closed to the open leaf
 */
public record DoorSwing(Point hinge, List<Point> arc) {

    private static final int STEPS = 18;

    /** Of a door of the body in an upright wall; empty if it opens inward and the side of its hinge is not known, or not upright. */
    public static Optional<DoorSwing> of(Body body, Opening door) {
        Face wall = door.wall();
        Axis across = wall.axis() == Axis.X ? Axis.Y : Axis.X;
        Face side = door.hinge() == null && door.swing() == null ? low(across) : door.hinge();
        if (side == null || !side.upright()) {
            return Optional.empty();
        }
        boolean inward = door.swing() != null;
        Box outside = body.outside();
        int outer = wall.sign() > 0 ? outside.high(wall.axis()) : outside.low(wall.axis());
        Point hinge = door.area()
                .face(side)
                .low()
                .with(wall.axis(), inward ? door.area().low(wall.axis()) : outer)
                .with(Axis.Z, 0);
        Face out = inward ? wall.opposite() : wall;
        return Optional.of(of(hinge, side, out, door.area().extent(across)));
    }

    /** Of a door of a unit on station; empty if it has no upright hinge. */
    public static Optional<DoorSwing> of(PlacedUnit unit, MovablePart part) {
        Pose pose = unit.pose(Situation.ON_STATION);
        Face side = part.hinge() == null ? null : pose.apply(part.hinge());
        if (side == null || !side.upright()) {
            return Optional.empty();
        }
        Box sweep = pose.apply(part.sweep(), unit.item().size());
        Box outline = unit.outline(Situation.ON_STATION);
        Axis axis = side.axis() == Axis.X ? Axis.Y : Axis.X;
        int above = sweep.high(axis) - outline.high(axis);
        int below = outline.low(axis) - sweep.low(axis);
        Face out = above >= below ? low(axis).opposite() : low(axis);
        Point hinge = sweep.face(side)
                .low()
                .with(axis, out.sign() > 0 ? sweep.low(axis) : sweep.high(axis))
                .with(Axis.Z, 0);
        return Optional.of(of(hinge, side, out, sweep.extent(side.axis())));
    }

    private static DoorSwing of(Point hinge, Face side, Face out, int radius) {
        List<Point> arc = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double turn = Math.PI / 2 * i / STEPS;
            int away = (int) Math.round(radius * Math.sin(turn));
            int along = (int) Math.round(radius * Math.cos(turn));
            arc.add(hinge.with(side.axis(), hinge.along(side.axis()) - side.sign() * along)
                    .with(out.axis(), hinge.along(out.axis()) + out.sign() * away));
        }
        return new DoorSwing(hinge, List.copyOf(arc));
    }

    private static Face low(Axis axis) {
        return axis == Axis.X ? Face.REAR : Face.RIGHT;
    }

    /** The edge of the open leaf. */
    public Point end() {
        return arc.get(arc.size() - 1);
    }
}

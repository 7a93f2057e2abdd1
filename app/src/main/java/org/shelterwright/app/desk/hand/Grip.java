package org.shelterwright.app.desk.hand;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.geometry.Point3D;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.ledger.fit.MountFace;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;

/**
 * One drag of one or more units along the surface that the first of them is mounted on. Made when a press becomes a drag;
 * needs no window. Each step is tried out in the session; nothing is kept before {@link #drop()}.
 */
public final class Grip {
    /** A ray that would carry the units farther than this goes past everything (mm). */
    private static final double FARTHEST = 50_000;

    private final Session session;
    private final Moving moving;
    private final Axis across;
    private final Point3D held;

    private Grip(Session session, Moving moving, Axis across, Point3D held) {
        this.session = session;
        this.moving = moving;
        this.across = across;
        this.held = held;
    }

    /**
     * Takes hold of units.
     *
     * @param units ids; those that are not placed, or that ride on others of them, only come along
     * @param press line of sight of the press
     * @return empty if none of them is placed, or the surface is seen edge on
     */
    public static Optional<Grip> take(Session session, Set<String> units, Ray press, Catching catching) {
        Scene scene = session.now().scene();
        Situation situation = session.situation().get();
        Optional<Moving> moving = Moving.of(scene, units, situation, press);
        return moving.flatMap(found -> {
            PlacedUnit leader = found.leader();
            Axis across = MountFace.of(leader.place(situation)).axis();
            Point3D at = press.into(leader.outline(situation)).orElseGet(() -> middle(leader, situation));
            return press.through(across, Ray.along(at, across)).map(held -> new Grip(session, found, across, held));
        });
    }

    /** Moves the units so that what was taken hold of lies on this line of sight; catches what is near. */
    public void to(Ray ray) {
        ray.through(across, Ray.along(held, across))
                .map(place -> place.subtract(held))
                .filter(way -> way.magnitude() < FARTHEST)
                .ifPresent(way -> show(shift(way)));
    }

    /** What caught in the last step. */
    public List<Catch> catches() {
        return List.of();
    }

    /** Distances to the nearest neighbours along the surface, at most two on each axis. */
    public List<Clearance> clearances() {
        return List.of();
    }

    /** Keeps where the units are now, as one step of the history. */
    public void drop() {
        session.keep(moving.name("Drag"));
    }

    /** Puts the units back. */
    public void cancel() {
        session.giveUp();
    }

    private void show(Point shift) {
        session.tryOut(moving.by("Drag", shift));
    }

    private static Point shift(Point3D way) {
        return new Point(wholeMm(way.getX()), wholeMm(way.getY()), wholeMm(way.getZ()));
    }

    private static int wholeMm(double mm) {
        return (int) Math.round(mm) * Lengths.MM;
    }

    private static Point3D middle(PlacedUnit unit, Situation situation) {
        Point centre = unit.outline(situation).centre();
        return new Point3D(centre.x() / 1e3, centre.y() / 1e3, centre.z() / 1e3);
    }
}

package org.shelterwright.app.desk.hand;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javafx.geometry.Point3D;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.session.Session;
import org.shelterwright.catalog.item.Situation;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.layout.Pin;
import org.shelterwright.layouts.scene.PlacedUnit;

/**
 * One drag of one or more units along the surface that the first of them is mounted on. Made when a press becomes a drag;
 * needs no window. Each step is tried out in the session; nothing is kept before {@link #drop()}. A pinned axis holds.
 */
public final class Grip {
    /** A ray that would carry the units farther than this goes past everything (mm). */
    private static final double FARTHEST = 50_000;

    private final Session session;
    private final Moving moving;
    private final Snapping snapping;
    private final Set<Axis> movable;
    private final Point3D held;
    private final Point start;
    private final Map<Axis, Integer> exact = new EnumMap<>(Axis.class);
    private Point asked;
    private Snapping.Caught caught;
    private boolean freely;
    private @Nullable Axis only;

    private Grip(Session session, Moving moving, Snapping snapping, Set<Axis> movable, Point3D held) {
        this.session = session;
        this.moving = moving;
        this.snapping = snapping;
        this.movable = movable;
        this.held = held;
        start = moving.leader().pose(moving.situation()).at();
        asked = start;
        caught = new Snapping.Caught(start, List.of());
    }

    /**
     * Takes hold of units; the one that is pressed leads and is the one that is caught.
     *
     * @param units ids; those that are not placed are left out, those that ride on others of them come along
     * @param press line of sight of the press
     * @return empty if none of them is placed, the surface is seen edge on, or pins hold all of it
     */
    public static Optional<Grip> take(Session session, Set<String> units, Ray press, Catching catching) {
        Situation situation = session.situation().get();
        return Moving.of(session.now().scene(), units, situation, press).flatMap(moving -> {
            Snapping snapping = new Snapping(moving, catching);
            Set<Axis> movable = movable(moving, snapping);
            PlacedUnit leader = moving.leader();
            Point3D at = press.into(leader.outline(situation)).orElseGet(() -> middle(leader, situation));
            return press.through(snapping.across(), Ray.along(at, snapping.across()))
                    .filter(held -> !movable.isEmpty())
                    .map(held -> new Grip(session, moving, snapping, movable, held));
        });
    }

    /** Moves the units so that what was taken hold of lies on this line of sight; catches what is near. */
    public void to(Ray ray) {
        Axis across = snapping.across();
        ray.through(across, Ray.along(held, across))
                .map(place -> place.subtract(held))
                .filter(way -> way.magnitude() < FARTHEST)
                .ifPresent(way -> {
                    asked = start.plus(new Point(wholeMm(way.getX()), wholeMm(way.getY()), wholeMm(way.getZ())));
                    show();
                });
    }

    /** Whether nothing catches. */
    public void freely(boolean wanted) {
        if (freely != wanted) {
            freely = wanted;
            show();
        }
    }

    /** Moves along one axis only; {@code null}: along both axes of the surface again. */
    public void only(@Nullable Axis axis) {
        if (only != axis) {
            only = axis;
            show();
        }
    }

    /** The axes along which the units can move: those of the surface, without those that are pinned. */
    public Set<Axis> axes() {
        return Set.copyOf(movable);
    }

    /**
     * Sets a distance to a neighbour; the units stay at it until {@link #release()}.
     *
     * @param clearance one of {@link #clearances()}
     * @param length (µm)
     */
    public void set(Clearance clearance, int length) {
        Axis axis = clearance.axis();
        int more = clearance.length() - length;
        exact.put(axis, caught.at().along(axis) + (clearance.high() ? more : -more));
        show();
    }

    /** Lets go of distances that were set. */
    public void release() {
        exact.clear();
        show();
    }

    /** What caught in the last step. */
    public List<Catch> catches() {
        return caught.catches();
    }

    /** Distances to the nearest neighbours along the axes in movement, one on each side. */
    public List<Clearance> clearances() {
        return Distances.of(snapping.filled(caught.at()), snapping.neighbours(), moved());
    }

    /** How far the units are from where they were. */
    public Point way() {
        return caught.at().minus(start);
    }

    /** Keeps where the units are now, as one step of the history. */
    public void drop() {
        session.keep(moving.name("Drag"));
    }

    /** Puts the units back. */
    public void cancel() {
        session.giveUp();
    }

    private Set<Axis> moved() {
        Set<Axis> moved = EnumSet.copyOf(movable);
        if (only != null) {
            moved.retainAll(Set.of(only));
        }
        return moved;
    }

    private void show() {
        Set<Axis> free = moved();
        Point wanted = start;
        for (Axis axis : free) {
            wanted = wanted.with(axis, asked.along(axis));
        }
        for (Map.Entry<Axis, Integer> set : exact.entrySet()) {
            wanted = wanted.with(set.getKey(), set.getValue());
        }
        free.removeAll(exact.keySet());
        caught = freely ? new Snapping.Caught(snapping.within(wanted), List.of()) : snapping.at(wanted, free);
        session.tryOut(moving.by("Drag", way()));
    }

    private static Set<Axis> movable(Moving moving, Snapping snapping) {
        Set<Axis> movable = snapping.along();
        for (PlacedUnit unit : moving.units()) {
            Pin pin = unit.placement().pin();
            movable.removeIf(axis -> pin.holds(axis));
        }
        return movable;
    }

    private static int wholeMm(double mm) {
        return (int) Math.round(mm) * Lengths.MM;
    }

    private static Point3D middle(PlacedUnit unit, Situation situation) {
        Point centre = unit.outline(situation).centre();
        return new Point3D(centre.x() / 1e3, centre.y() / 1e3, centre.z() / 1e3);
    }
}

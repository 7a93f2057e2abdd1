package org.shelterwright.app.desk.transport;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Point3D;
import org.jspecify.annotations.Nullable;
import org.shelterwright.app.desk.hand.Catch;
import org.shelterwright.app.desk.hand.Ray;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.layouts.transport.edit.PutStand;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/**
 * A piece that is dragged over the deck of its car. What is held keeps its place under the pointer; a crate goes on top of a crate that
 * the pointer rests on. Every place is tried out with all limits answering, and kept as one step, or given up. Needs no window.
 */
final class DeckDrag {
    private final JourneySession session;
    private final PlacedLoad load;
    private final PlacedPiece piece;
    private final Point3D held;
    private final double toleranceMm;
    private final DeckCatching catching;
    private @Nullable Axis only;
    private boolean freely;
    private List<Catch> catches = List.of();
    private @Nullable Ray last;

    /**
     * Takes a piece.
     *
     * @param held place at which it is held (mm, frame of the car)
     * @param toleranceMm how near a place must be to catch (mm)
     */
    DeckDrag(JourneySession session, PlacedLoad load, PlacedPiece piece, Point3D held, double toleranceMm) {
        this.session = session;
        this.load = load;
        this.piece = piece;
        this.held = held;
        this.toleranceMm = toleranceMm;
        this.catching = new DeckCatching(load, piece);
    }

    /** Whether it moves without being caught. */
    void freely(boolean on) {
        freely = on;
        again();
    }

    /** Holds it to one axis, or lets it go from it. */
    void only(Axis axis) {
        only = axis == only ? null : axis;
        again();
    }

    /** What caught it. */
    List<Catch> catches() {
        return catches;
    }

    /** Follows the pointer; where the floor is seen edge on, it stays. */
    void to(Ray ray) {
        last = ray;
        int level = level(ray);
        double holdHeight = held.getZ() - piece.pose().at().z() / 1e3;
        ray.through(Axis.Z, level / 1e3 + holdHeight).ifPresent(place -> put(place, level));
    }

    void drop() {
        session.keep("Move " + piece.id());
    }

    void cancel() {
        session.giveUp();
    }

    private void again() {
        if (last != null) {
            to(last);
        }
    }

    private void put(Point3D place, int level) {
        Point from = piece.pose().at();
        Point wanted =
                new Point(from.x() + um(place.getX() - held.getX()), from.y() + um(place.getY() - held.getY()), level);
        Box size = piece.box().moved(new Point(-from.x(), -from.y(), -from.z()));
        Point at = wanted;
        catches = List.of();
        if (!freely) {
            DeckCatching.Caught caught = catching.at(wanted, size, um(toleranceMm));
            at = caught.at();
            catches = caught.catches();
        }
        if (only != null) {
            at = from.with(only, at.along(only));
        }
        session.tryOut(
                new PutStand(load.id(), piece.id(), new Pose(at, piece.pose().yaw())));
    }

    /** Height of what the pointer rests on (µm): the top of another crate under it, or the floor. */
    private int level(Ray ray) {
        if (piece.shape().crate() == null) {
            return 0;
        }
        double nearest = Double.POSITIVE_INFINITY;
        int level = 0;
        for (PlacedPiece other : load.pieces()) {
            Box box = other.box();
            Optional<Point3D> hit = other.id().equals(piece.id()) ? Optional.empty() : ray.into(box);
            if (hit.isPresent()) {
                double away = hit.get().distance(ray.origin());
                boolean top = Math.abs(hit.get().getZ() - box.z1() / 1e3) < 0.5;
                if (away < nearest) {
                    nearest = away;
                    level = top && other.shape().crate() != null ? box.z1() : 0;
                }
            }
        }
        return level;
    }

    private static int um(double mm) {
        return (int) Math.round(Math.max(-500_000, Math.min(500_000, mm)) * 1000);
    }
}

package org.shelterwright.app.desk.transport;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.shelterwright.app.desk.hand.Catch;
import org.shelterwright.catalog.space.Axis;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.transit.ContainerSeat;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.layouts.transport.scene.PlacedLoad;
import org.shelterwright.layouts.transport.scene.PlacedPiece;

/**
 * Where something that is moved over a deck is caught: places for containers, the ends and sides of the deck, its middle, faces of what
 * stands beside it; else a grid. Exact and without a memory: the same wish gives the same place.
 */
final class DeckCatching {
    /** Step of the grid (µm). */
    static final int GRID = 10_000;

    private final PlacedLoad load;
    private final PlacedPiece piece;

    DeckCatching(PlacedLoad load, PlacedPiece piece) {
        this.load = load;
        this.piece = piece;
    }

    /**
     * A place, and why.
     *
     * @param at low corner of what is moved, in the frame of the car
     */
    record Caught(Point at, List<Catch> catches) {
        Caught {
            catches = List.copyOf(catches);
        }
    }

    /** @param at place of the low corner on the axis (µm) */
    private record Stop(int at, Catch.Kind kind, Face face, String words) {}

    /**
     * Catches a wish.
     *
     * @param wanted low corner of the turned size
     * @param size of the turned piece, as a cuboid at the origin
     * @param tolerance how near a place must be (µm)
     */
    Caught at(Point wanted, Box size, int tolerance) {
        List<Catch> catches = new ArrayList<>();
        Point at = wanted;
        for (Axis axis : List.of(Axis.X, Axis.Y)) {
            Box moved = size.moved(at);
            int wish = at.along(axis);
            Optional<Stop> found = stops(axis, moved).stream()
                    .filter(stop -> Math.abs(stop.at() - wish) <= tolerance)
                    .min(Comparator.comparing(Stop::kind).thenComparingInt(stop -> Math.abs(stop.at() - wish)));
            if (found.isPresent()) {
                Stop stop = found.get();
                at = at.with(axis, stop.at());
                catches.add(
                        new Catch(stop.kind(), size.moved(at).face(stop.face()).centre(), stop.words(), List.of()));
            } else {
                at = at.with(axis, Math.floorDiv(wish + GRID / 2, GRID) * GRID);
            }
        }
        return new Caught(at, catches);
    }

    /** Places that a low corner is caught at along an axis. */
    private List<Stop> stops(Axis axis, Box moved) {
        TransitCar car = load.car();
        int extent = moved.high(axis) - moved.low(axis);
        int deck = axis == Axis.X ? car.deck().length() : car.deck().width();
        Face low = axis == Axis.X ? Face.REAR : Face.RIGHT;
        Face high = axis == Axis.X ? Face.FRONT : Face.LEFT;
        List<Stop> stops = new ArrayList<>();
        if (axis == Axis.X && !piece.shape().wheeled()) {
            for (ContainerSeat seat : car.seats()) {
                if (seat.length() == extent) {
                    stops.add(new Stop(seat.x(), Catch.Kind.HOLE, low, seat.name()));
                }
            }
        }
        if (axis == Axis.Y) {
            stops.add(new Stop((deck - extent) / 2, Catch.Kind.WALL, Face.TOP, "the middle of the deck"));
        }
        stops.add(new Stop(0, Catch.Kind.WALL, low, axis == Axis.X ? "the rear end" : "the right side"));
        stops.add(new Stop(deck - extent, Catch.Kind.WALL, high, axis == Axis.X ? "the front end" : "the left side"));
        for (PlacedPiece other : load.pieces()) {
            Box box = other.box();
            if (!other.id().equals(piece.id()) && beside(box, moved, axis)) {
                stops.add(new Stop(box.high(axis), Catch.Kind.FACE, low, "against " + other.name()));
                stops.add(new Stop(box.low(axis) - extent, Catch.Kind.FACE, high, "against " + other.name()));
            }
        }
        return stops;
    }

    /** Whether both share more than a line when seen along an axis. */
    private static boolean beside(Box one, Box other, Axis along) {
        for (Axis axis : Axis.values()) {
            if (axis != along && one.gap(other, axis) >= 0) {
                return false;
            }
        }
        return true;
    }
}

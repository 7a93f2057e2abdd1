package org.shelterwright.layouts.transport.scene;

import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.layouts.transport.Load;

/** A car with everything that stands on it. Moments are kg·µm in the frame of the car. */
public record PlacedLoad(Load load, TransitCar car, List<PlacedPiece> pieces) {
    public PlacedLoad {
        pieces = List.copyOf(pieces);
    }

    public String id() {
        return load.id();
    }

    public String name() {
        return load.name();
    }

    public Optional<PlacedPiece> piece(String id) {
        return pieces.stream().filter(one -> one.id().equals(id)).findFirst();
    }

    /** Ids of all pieces on it, and its own. */
    public List<String> ids() {
        return Stream.concat(pieces.stream().map(PlacedPiece::id), Stream.of(id()))
                .toList();
    }

    /** Mass of what is on it, as far as it is known (kg). */
    public double massKg() {
        return pieces.stream()
                .mapToDouble(
                        one -> one.shape().massKg() == null ? 0 : one.shape().massKg())
                .sum();
    }

    public double uncertaintyKg() {
        return pieces.stream().mapToDouble(one -> one.shape().uncertaintyKg()).sum();
    }

    public double momentX() {
        return moment(Point::x);
    }

    public double momentY() {
        return moment(Point::y);
    }

    public double momentZ() {
        return moment(Point::z);
    }

    private double moment(ToDoubleFunction<Point> along) {
        double sum = 0;
        for (PlacedPiece one : pieces) {
            Double massKg = one.shape().massKg();
            Point centre = one.centre();
            sum += massKg == null || centre == null ? 0 : massKg * along.applyAsDouble(centre);
        }
        return sum;
    }

    /** Why its mass or centre cannot be told; empty if both can. */
    public Optional<String> unknown() {
        return pieces.stream().flatMap(one -> one.shape().unknown().stream()).findFirst();
    }

    /** The least cuboid around what is on it; empty if nothing is. */
    public Optional<Box> hull() {
        return pieces.stream().map(PlacedPiece::box).reduce(Box::hull);
    }
}

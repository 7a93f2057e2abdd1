package org.shelterwright.layouts.transport.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.catalog.transit.WheelGroup;

/**
 * What the two wheel groups of a car bear. A mass at x puts {@code (x − x1)/(x2 − x1)} of itself on the front group and the rest on
 * the rear one; the sideways moment is shared in the same way, as by a frame that is soft in torsion. The empty car bears equally on
 * both and on both sides.
 *
 * @param groups from rear to front
 */
public record CarStatics(List<GroupLoad> groups) {
    /**
     * The load of one wheel group, with the empty car.
     *
     * @param leftKg on the left wheels (kg)
     * @param rightKg on the right wheels (kg)
     * @param rangeKg by how much more it may bear, as the masses of the pieces are uncertain (kg)
     */
    public record GroupLoad(WheelGroup group, double leftKg, double rightKg, double rangeKg) {
        public double kg() {
            return leftKg + rightKg;
        }

        /** What each axle may bear at most (kg). */
        public double axleKg() {
            return (kg() + rangeKg) / group.axles();
        }

        /** The greater side over the smaller one; infinite if a side is lifted. */
        public double sideRatio() {
            double least = Math.min(leftKg, rightKg);
            return least <= 0 ? Double.POSITIVE_INFINITY : Math.max(leftKg, rightKg) / least;
        }
    }

    public CarStatics {
        groups = List.copyOf(groups);
    }

    /** The loads of a car; empty unless it has two wheel groups. */
    public static Optional<CarStatics> of(PlacedLoad load) {
        return of(load.car(), load.pieces());
    }

    /** The loads of a car with pieces on it; empty unless it has two wheel groups. */
    public static Optional<CarStatics> of(TransitCar car, List<PlacedPiece> pieces) {
        if (car.wheels().size() != 2) {
            return Optional.empty();
        }
        List<GroupLoad> groups = new ArrayList<>();
        for (int g = 0; g < 2; g++) {
            WheelGroup group = car.wheels().get(g);
            WheelGroup other = car.wheels().get(1 - g);
            double kg = car.tareKg() / 2;
            double side = 0;
            double range = 0;
            for (PlacedPiece piece : pieces) {
                Double massKg = piece.shape().massKg();
                Point centre = piece.centre();
                if (massKg != null && centre != null) {
                    double share = (double) (centre.x() - other.x()) / (group.x() - other.x());
                    kg += massKg * share;
                    range += piece.shape().uncertaintyKg() * Math.abs(share);
                    side += massKg
                            * share
                            * Lengths.metres(centre.y() - car.deck().width() / 2);
                }
            }
            double half = side / Lengths.metres(group.contact());
            groups.add(new GroupLoad(group, kg / 2 + half, kg / 2 - half, range));
        }
        return Optional.of(new CarStatics(groups));
    }

    /** The heavier group over the lighter one; infinite if a group is lifted. */
    public double ratio() {
        double a = groups.get(0).kg();
        double b = groups.get(1).kg();
        return Math.min(a, b) <= 0 ? Double.POSITIVE_INFINITY : Math.max(a, b) / Math.min(a, b);
    }

    public double greatestAxleKg() {
        return groups.stream().mapToDouble(GroupLoad::axleKg).max().orElse(0);
    }
}

package org.shelterwright.catalog.carrier;

import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Provision;
import org.shelterwright.catalog.item.Tank;
import org.shelterwright.catalog.source.Figures;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Millimetres;
import org.shelterwright.catalog.space.Point;

/**
 * What carries a body. Its frame has the origin on the ground under the middle of its first (front) axle; x forward, y to
 * the left, z up; axles behind the first one have a negative x. A trailer's frame has its origin under its first axle.
 *
 * @param bodyAt where the origin of the body (inside rear right floor corner) comes to lie, in the frame of the carrier
 * @param axles from front to rear; at least one
 * @param tareCentreHeight height of the centre of mass of the empty carrier above ground (µm); {@code null} if not known
 * @param grossRatingKg permitted laden mass (kg); {@code null} if not known
 * @param combinationRatingKg permitted mass with trailer (kg); {@code null} if not known or not apt
 * @param tanks fuel and other contents that its tare does not hold
 * @param outline cuboids of cab and deck, for pictures
 */
public record Carrier(
        String id,
        String name,
        Kind kind,
        Point bodyAt,
        @Millimetres int length,
        @Millimetres int width,
        List<Axle> axles,
        @Nullable @Millimetres Integer tareCentreHeight,
        @Nullable Double grossRatingKg,
        @Nullable Double combinationRatingKg,
        @Nullable Coupling coupling,
        List<Tank> tanks,
        List<Seat> seats,
        List<Box> outline,
        List<Provision> provisions,
        @Nullable String note) {
    public Carrier {
        axles = List.copyOf(axles);
        tanks = List.copyOf(tanks);
        seats = List.copyOf(seats);
        outline = List.copyOf(outline);
        provisions = List.copyOf(provisions);
        if (axles.isEmpty()) {
            throw new IllegalArgumentException("The carrier " + id + " needs at least one axle.");
        }
        for (int i = 1; i < axles.size(); i++) {
            if (axles.get(i).x() >= axles.get(i - 1).x()) {
                throw new IllegalArgumentException("The axles of carrier " + id + " must follow from front to rear: "
                        + axles.get(i).name() + " does not lie behind "
                        + axles.get(i - 1).name() + ".");
            }
        }
        if (grossRatingKg != null) {
            Figures.positive("gross rating (kg)", grossRatingKg);
        }
    }

    /** The seats that so many people take, the driver's first; no more than there are. */
    public List<Seat> seatsTaken(int people) {
        return seats.stream()
                .sorted(Comparator.comparing(seat -> !seat.driver()))
                .limit(people)
                .toList();
    }

    /** What a carrier is. */
    public enum Kind {
        TRUCK,
        /** Drawn, with its coupling load on the truck. */
        CENTRE_AXLE_TRAILER,
        /** Drawn, with a steered front axle: no vertical load on the coupling. */
        DRAWBAR_TRAILER
    }
}

package org.shelterwright.catalog.transit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Provision;
import org.shelterwright.catalog.source.Figures;
import org.shelterwright.catalog.source.Source;
import org.shelterwright.catalog.space.Millimetres;
import org.shelterwright.catalog.space.Size;

/**
 * A car that carries things on a leg. Its frame has the origin at the rear right corner of the loading floor; x forward, y to the
 * left, z up. What is not known is {@code null}, and then not assessed.
 *
 * @param letters class letters of a wagon, such as "Rgs"; see {@link WagonClasses}
 * @param deck its loading floor
 * @param lengthOver length over buffers or coupling faces, or outside length (µm)
 * @param outside outside size of what is itself carried, such as a container; {@code null} of other cars
 * @param wheels bogies or single axles, from rear to front; empty of what has none
 * @param tareKg empty mass
 * @param tareCentreHeight height of the empty centre of mass above rail or ground (µm)
 * @param grossRatingKg greatest mass with load (kg)
 * @param payloadKg greatest load on any way (kg)
 * @param loadLimits greatest load by line category
 * @param floor what its floor bears
 * @param doorways openings that loads pass through; empty of an open deck
 * @param anchorRows points that lashings go to
 * @param chockRails strips of the deck on which chocks hold
 * @param stops walls, ends or stanchions that block a load
 * @param seats places for freight containers
 */
public record TransitCar(
        String id,
        String name,
        Kind kind,
        @Nullable String letters,
        Deck deck,
        @Nullable @Millimetres Integer lengthOver,
        @Nullable Size outside,
        List<WheelGroup> wheels,
        double tareKg,
        @Nullable @Millimetres Integer tareCentreHeight,
        @Nullable Double grossRatingKg,
        @Nullable Double payloadKg,
        List<CategoryLoad> loadLimits,
        FloorRating floor,
        List<Doorway> doorways,
        List<AnchorRow> anchorRows,
        List<ChockRail> chockRails,
        List<Stop> stops,
        List<ContainerSeat> seats,
        Source source,
        @Nullable String note) {
    public TransitCar {
        wheels = List.copyOf(wheels);
        loadLimits = List.copyOf(loadLimits);
        doorways = List.copyOf(doorways);
        anchorRows = List.copyOf(anchorRows);
        chockRails = List.copyOf(chockRails);
        stops = List.copyOf(stops);
        seats = List.copyOf(seats);
        Figures.notNegative("tare (kg)", tareKg);
        if (grossRatingKg != null && grossRatingKg <= tareKg) {
            throw new IllegalArgumentException("The gross rating of " + grossRatingKg + " kg of the car " + id
                    + " must be above its tare of " + tareKg + " kg.");
        }
        if (payloadKg != null) {
            Figures.positive("payload (kg)", payloadKg);
        }
        for (int i = 1; i < wheels.size(); i++) {
            if (wheels.get(i).x() <= wheels.get(i - 1).x()) {
                throw new IllegalArgumentException("The wheels of the car " + id + " must follow from rear to front: "
                        + wheels.get(i).name() + " does not lie before "
                        + wheels.get(i - 1).name() + ".");
            }
        }
    }

    /** What a car is. */
    public enum Kind {
        FLAT_WAGON("flat wagon"),
        COVERED_WAGON("covered wagon"),
        LORRY("lorry"),
        CONTAINER("container"),
        HOLD("aircraft hold"),
        SHIP_DECK("vehicle deck of a ship");

        private final String word;

        Kind(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }

        /** Whether it runs on rails. */
        public boolean wagon() {
            return this == FLAT_WAGON || this == COVERED_WAGON;
        }
    }

    /** The anchor points, row by row, each with a name of its own. */
    public List<Provision> anchors() {
        List<Provision> anchors = new ArrayList<>();
        anchorRows.forEach(row -> anchors.addAll(row.points()));
        return List.copyOf(anchors);
    }

    public Optional<Provision> anchor(String name) {
        return anchors().stream().filter(one -> one.name().equals(name)).findFirst();
    }

    /** Axles in all. */
    public int axleCount() {
        return wheels.stream().mapToInt(WheelGroup::axles).sum();
    }

    /** The greatest load by gross rating or payload, whatever the way (kg); {@code null} if neither is known. */
    public @Nullable Double ratedLoadKg() {
        Double byGross = grossRatingKg == null ? null : Double.valueOf(grossRatingKg - tareKg);
        if (byGross == null || payloadKg == null) {
            return byGross == null ? payloadKg : byGross;
        }
        return Math.min(byGross, payloadKg);
    }
}

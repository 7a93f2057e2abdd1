package org.shelterwright.layouts.transport;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A car with what is on it.
 *
 * @param car id of the transit car
 * @param stands where things stand on it
 * @param packed whether they are packed from wall to wall, gaps filled, so that the walls of the car hold them as one
 * @param handBrake of vehicles on it; {@code null} if the method does not say
 * @param gear of vehicles on it; {@code null} if the method does not say
 */
public record Load(
        String id,
        String name,
        String car,
        List<Stand> stands,
        List<Lashing> lashings,
        List<Block> blocks,
        boolean packed,
        @Nullable HandBrake handBrake,
        @Nullable Gear gear,
        @Nullable String note) {
    /** Rules differ on it, so that a method must say. */
    public enum HandBrake {
        SET("set"),
        RELEASED("released");

        private final String word;

        HandBrake(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    /** Rules differ on it, so that a method must say. */
    public enum Gear {
        NEUTRAL("in neutral"),
        ENGAGED("engaged");

        private final String word;

        Gear(String word) {
            this.word = word;
        }

        public String word() {
            return word;
        }
    }

    public Load {
        stands = List.copyOf(stands);
        lashings = List.copyOf(lashings);
        blocks = List.copyOf(blocks);
    }

    /** A car with nothing on it yet. */
    public static Load empty(String id, String name, String car) {
        return new Load(id, name, car, List.of(), List.of(), List.of(), false, null, null, null);
    }

    public Optional<Stand> stand(String what) {
        return stands.stream().filter(one -> one.what().equals(what)).findFirst();
    }

    public Load withCar(String other) {
        return new Load(id, name, other, stands, lashings, blocks, packed, handBrake, gear, note);
    }

    public Load withStands(List<Stand> others) {
        return new Load(id, name, car, others, lashings, blocks, packed, handBrake, gear, note);
    }

    public Load withLashings(List<Lashing> others) {
        return new Load(id, name, car, stands, others, blocks, packed, handBrake, gear, note);
    }

    public Load withBlocks(List<Block> others) {
        return new Load(id, name, car, stands, lashings, others, packed, handBrake, gear, note);
    }

    public Load withPacked(boolean other) {
        return new Load(id, name, car, stands, lashings, blocks, other, handBrake, gear, note);
    }

    /** The same with what the method says of vehicles on it. */
    public Load withMethod(@Nullable HandBrake brake, @Nullable Gear engaged) {
        return new Load(id, name, car, stands, lashings, blocks, packed, brake, engaged, note);
    }
}

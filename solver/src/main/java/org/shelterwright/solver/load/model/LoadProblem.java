package org.shelterwright.solver.load.model;

import java.util.List;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.space.Size;

/**
 * What is to be loaded and into what. Lengths are whole, in one unit throughout (µm in the program).
 *
 * @param room inside of the car: x from the front wall to the end through which it is loaded, y across, z up
 * @param kinds what is to be loaded
 */
public record LoadProblem(Size room, List<CargoKind> kinds, Support support, Practice practice) {
    /** Most pieces that a problem may have. */
    public static final int MOST_PIECES = 20_000;

    public LoadProblem {
        kinds = List.copyOf(kinds);
        long pieces = kinds.stream().mapToLong(CargoKind::count).sum();
        if (pieces > MOST_PIECES) {
            throw new IllegalArgumentException(
                    "The load has " + pieces + " pieces, but may have at most " + MOST_PIECES + ". Load it in parts.");
        }
        boolean stacked = kinds.stream().anyMatch(kind -> limited(kind.topLoadKg()));
        if (practice.weighs() || stacked) {
            for (CargoKind kind : kinds) {
                if (Double.isNaN(kind.massKg())) {
                    throw new IllegalArgumentException(
                            "The mass of " + kind.name()
                                    + " is missing, but limits on mass, balance or stacking need it. Give it, or drop the limits.");
                }
            }
        }
        if (support == Support.NONE
                && (practice.byStops() || stacked || !practice.keptFree().isEmpty())) {
            throw new IllegalArgumentException(
                    "Stacking strength, stops and space kept free can only be held where every piece is fully supported.");
        }
        Box inside = room.box();
        for (Box box : practice.keptFree()) {
            if (!inside.contains(box) || box.z0() != 0) {
                throw new IllegalArgumentException(
                        "The space kept free " + box + " must stand on the floor of the room.");
            }
        }
    }

    public static LoadProblem of(Size room, List<CargoKind> kinds, Support support) {
        return new LoadProblem(room, kinds, support, Practice.NONE);
    }

    public LoadProblem with(Practice other) {
        return new LoadProblem(room, kinds, support, other);
    }

    public LoadProblem withKinds(List<CargoKind> others) {
        return new LoadProblem(room, others, support, practice);
    }

    /** Volume of the room, in cubed units of length. */
    public double roomVolume() {
        return (double) room.x() * room.y() * room.z();
    }

    public int pieces() {
        return kinds.stream().mapToInt(CargoKind::count).sum();
    }

    /** Whether some kind bears only so much, yet something. */
    public boolean stackingLimited() {
        return kinds.stream().anyMatch(kind -> kind.topLoadKg() > 0 && limited(kind.topLoadKg()));
    }

    private static boolean limited(double topLoadKg) {
        return topLoadKg > 0 && topLoadKg < Double.POSITIVE_INFINITY;
    }
}

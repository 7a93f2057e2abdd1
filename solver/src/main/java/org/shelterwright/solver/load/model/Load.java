package org.shelterwright.solver.load.model;

import java.util.List;

/**
 * Pieces in their places.
 *
 * @param stowed in the order in which they are put in: each stands on what comes before it, and slides in from the end at the
 *     highest x past what is there, wherever such an order exists
 */
public record Load(List<Stowed> stowed) {
    public Load {
        stowed = List.copyOf(stowed);
    }

    /** Volume of all pieces, in cubed units of length. */
    public double volume() {
        return stowed.stream().mapToDouble(Stowed::volume).sum();
    }

    /** Mass of all pieces (kg); {@code NaN} if one is not known. */
    public double massKg(List<CargoKind> kinds) {
        return stowed.stream()
                .mapToDouble(one -> kinds.get(one.kind()).massKg())
                .sum();
    }
}

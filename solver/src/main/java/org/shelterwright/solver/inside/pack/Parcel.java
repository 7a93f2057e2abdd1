package org.shelterwright.solver.inside.pack;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.layouts.layout.Posture;

/**
 * A piece to pack.
 *
 * @param upright true if it keeps its top up
 * @param fragile true if nothing may lie on it
 * @param grip room for fingers at two sides (µm)
 */
public record Parcel(String id, Size size, boolean upright, boolean fragile, int grip) {
    double volume() {
        return size.volumeM3();
    }

    /** Whether it needs at least the room of another wherever it lies. */
    boolean atLeast(Parcel other) {
        int[] own = sides();
        int[] his = other.sides();
        return (upright || !other.upright)
                && (!upright || size.z() >= other.size.z())
                && (fragile || !other.fragile)
                && grip >= other.grip
                && own[0] >= his[0]
                && own[1] >= his[1]
                && own[2] >= his[2];
    }

    private int[] sides() {
        int[] sides = {size.x(), size.y(), size.z()};
        Arrays.sort(sides);
        return sides;
    }

    List<Posture> postures() {
        List<Posture> postures = new ArrayList<>();
        List<Size> seen = new ArrayList<>();
        for (Posture posture : Posture.values()) {
            Size lying = posture.apply(size);
            if ((!upright || posture.upright()) && !seen.contains(lying)) {
                seen.add(lying);
                postures.add(posture);
            }
        }
        return postures;
    }
}

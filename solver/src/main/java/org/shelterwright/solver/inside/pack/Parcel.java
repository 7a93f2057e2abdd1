package org.shelterwright.solver.inside.pack;

import java.util.ArrayList;
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

package org.shelterwright.catalog.piece;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.rack.Airflow;
import org.shelterwright.catalog.rack.RackStandard;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Millimetres;

/**
 * How a piece sits in a rack.
 *
 * @param units height units that it takes
 * @param frontDepth how far it stands out before the mounting plane (µm)
 * @param support {@code null} if not known
 * @param cableFaces where its cables leave
 * @param airflow {@code null} if not known
 * @param slideTravel how far it slides out (µm); {@code null} if it does not
 * @param armDepth depth that its folded cable arm needs behind it (µm); {@code null} if it has none
 * @param securedBy what keeps it in on the road if it slides; {@code null} if not stated
 * @param access {@code null}: none
 * @param blank true if it only closes its units to air
 */
public record RackMount(
        int units,
        @Millimetres int frontDepth,
        @Nullable RackSupport support,
        List<CableFace> cableFaces,
        @Nullable Airflow airflow,
        @Nullable @Millimetres Integer slideTravel,
        @Nullable @Millimetres Integer armDepth,
        @Nullable String securedBy,
        @Nullable AccessNeed access,
        boolean blank) {
    public RackMount {
        if (units < 1 || units > RackStandard.MOST_UNITS) {
            throw new IllegalArgumentException(
                    "A rack-mounted piece of " + units + " height units must have 1 to " + RackStandard.MOST_UNITS + ".");
        }
        if (frontDepth < 0) {
            throw new IllegalArgumentException("The depth before the mounting plane must not be below zero.");
        }
        if (slideTravel != null && slideTravel <= 0 || armDepth != null && armDepth < 0) {
            throw new IllegalArgumentException("A slide-out must travel, and its cable arm must not be below zero deep.");
        }
        cableFaces = List.copyOf(cableFaces);
    }

    /** Depth that plugs and bent cables need beyond a face, the cable arm included at the rear (µm). */
    public int cableDepth(Face face) {
        int plugs = cableFaces.stream()
                .filter(one -> one.face() == face)
                .mapToInt(CableFace::depth)
                .max()
                .orElse(0);
        return face == Face.REAR && armDepth != null ? Math.max(plugs, armDepth) : plugs;
    }
}

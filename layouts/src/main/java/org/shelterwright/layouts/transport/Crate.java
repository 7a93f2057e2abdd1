package org.shelterwright.layouts.transport;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.body.Provision;
import org.shelterwright.catalog.source.Figures;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.catalog.transit.FloorMaterial;
import org.shelterwright.catalog.transit.Underside;

/**
 * A crate or loose piece. Its frame has the origin at the rear right bottom corner.
 *
 * @param massKg with content (kg); {@code null} if not known
 * @param uncertaintyKg half width of the range of its mass (kg); {@code null}: none stated, taken as 0
 * @param centre of mass; {@code null} if not known
 * @param underside what it stands on the floor with
 * @param top what its top is of, for what stands on it; {@code null}: of what its underside is, where that tells it
 * @param stackingKg what may stand on it (kg); {@code null} if not known
 * @param fragile nothing may stand on it
 * @param eyes points that lashings or slings go to
 */
public record Crate(
        Size size,
        @Nullable Double massKg,
        @Nullable Double uncertaintyKg,
        @Nullable Point centre,
        Underside underside,
        @Nullable FloorMaterial top,
        @Nullable Double stackingKg,
        boolean fragile,
        List<Provision> eyes) {
    public Crate {
        eyes = List.copyOf(eyes);
        if (massKg != null) {
            Figures.within("mass of a crate (kg)", massKg, 0, 100_000);
        }
        if (uncertaintyKg != null) {
            Figures.notNegative("uncertainty of the mass of a crate (kg)", uncertaintyKg);
        }
        if (size.x() <= 0 || size.y() <= 0 || size.z() <= 0) {
            throw new IllegalArgumentException("The size of a crate must be above zero in all three.");
        }
        if (centre != null && !size.box().contains(centre)) {
            throw new IllegalArgumentException("The centre of mass of a crate must lie within its size.");
        }
    }

    /** What may stand on it (kg); 0 of a fragile one, empty if not known. */
    public Optional<Double> bearsKg() {
        return fragile ? Optional.of(0.0) : Optional.ofNullable(stackingKg);
    }

    /** What stands on it stands on this; empty if it is not known. */
    public Optional<FloorMaterial> topMaterial() {
        if (top != null) {
            return Optional.of(top);
        }
        return switch (underside) {
            case SAWN_TIMBER -> Optional.of(FloorMaterial.SAWN_TIMBER);
            case ROUGH_METAL -> Optional.of(FloorMaterial.ROUGH_METAL);
            case PAINTED_METAL -> Optional.of(FloorMaterial.PAINTED_METAL);
            case PLANED_TIMBER, PLASTIC_PALLET, STEEL_CRATE, TYRES, ANTI_SLIP -> Optional.empty();
        };
    }
}

package org.shelterwright.layouts.transport;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Figures;
import org.shelterwright.catalog.space.Millimetres;

/**
 * A ramp that vehicles are driven over.
 *
 * @param degrees its slope
 * @param width between its curbs (µm); {@code null} if not known
 * @param axleKg load that it bears under one axle (kg); {@code null} if not known
 */
public record Ramp(
        String name,
        double degrees,
        @Nullable @Millimetres Integer width,
        @Nullable Double axleKg) {
    public Ramp {
        Figures.within("slope of ramp " + name + " (degrees)", degrees, 0, 45);
        if (axleKg != null) {
            Figures.positive("axle load of ramp " + name + " (kg)", axleKg);
        }
    }
}

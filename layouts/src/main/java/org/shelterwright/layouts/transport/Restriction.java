package org.shelterwright.layouts.transport;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Millimetres;

/**
 * A bridge, tunnel or narrow place of a way. A figure that is not given is not asked; one that is asked and not known makes the
 * place not assessed.
 *
 * @param asks what the place limits, such as gross mass; what of it is not given below is missing
 * @param grossKg greatest mass of one vehicle or car (kg)
 * @param axleKg greatest load of one axle (kg)
 * @param height clear height above the way (µm)
 * @param width clear width (µm)
 */
public record Restriction(
        String name,
        List<Asked> asks,
        @Nullable Double grossKg,
        @Nullable Double axleKg,
        @Nullable @Millimetres Integer height,
        @Nullable @Millimetres Integer width,
        @Nullable String source) {
    /** What a place may limit. */
    public enum Asked {
        GROSS,
        AXLE,
        HEIGHT,
        WIDTH
    }

    public Restriction {
        asks = List.copyOf(asks);
    }
}

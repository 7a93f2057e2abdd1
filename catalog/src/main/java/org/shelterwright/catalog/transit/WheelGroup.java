package org.shelterwright.catalog.transit;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Figures;
import org.shelterwright.catalog.space.Millimetres;

/**
 * A bogie, or an axle by itself.
 *
 * @param x its middle (of a bogie, its pin) in the frame of the car
 * @param axles how many
 * @param spacing between its outer axles (µm); 0 of a single axle
 * @param contact between the places where left and right wheels bear (µm)
 * @param axleRatingKg what each axle may bear (kg)
 */
public record WheelGroup(
        String name,
        @Millimetres int x,
        int axles,
        @Millimetres int spacing,
        @Millimetres int contact,
        @Nullable Double axleRatingKg) {
    public WheelGroup {
        Figures.within("number of axles of " + name, axles, 1, 8);
        if (contact <= 0) {
            throw new IllegalArgumentException("The wheels of " + name + " must stand apart.");
        }
        if (spacing < 0 || axles == 1 && spacing != 0) {
            throw new IllegalArgumentException("The axle spacing of " + name
                    + " must be 0 of a single axle and otherwise the distance of its outer axles.");
        }
    }
}

package org.shelterwright.catalog.transit;

import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Millimetres;

/**
 * An opening that loads pass through.
 *
 * @param wall the side of the car that it is in
 * @param width clear (µm)
 * @param height clear above the floor (µm)
 */
public record Doorway(
        String name,
        Face wall,
        @Millimetres int width,
        @Millimetres int height) {
    public Doorway {
        if (width <= 0 || height <= 0) {
            throw new IllegalArgumentException("The doorway " + name + " of " + Lengths.format(width) + " x "
                    + Lengths.format(height) + " mm must be above zero in both.");
        }
    }
}

package org.shelterwright.app.desk.hand;

import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Millimetres;

/**
 * How a drag catches.
 *
 * @param toleranceMm how near a place must be to be caught, at the depth of what is dragged (mm)
 * @param grid step of the grid (µm); zero: no grid
 */
public record Catching(double toleranceMm, @Millimetres int grid) {
    public Catching {
        if (!(toleranceMm >= 0 && toleranceMm <= 10_000)) {
            throw new IllegalArgumentException(
                    "The tolerance of " + toleranceMm + " mm must lie between 0 and 10 000 mm.");
        }
        if (grid < 0) {
            throw new IllegalArgumentException("The grid must not be below zero.");
        }
    }

    /** The tolerance (µm). */
    @Millimetres
    int tolerance() {
        return (int) Math.round(toleranceMm * Lengths.MM);
    }
}

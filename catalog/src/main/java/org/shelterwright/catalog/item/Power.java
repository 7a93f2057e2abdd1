package org.shelterwright.catalog.item;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Figures;

/**
 * What an item takes from its supply and gives off as heat.
 *
 * @param supply which kind of supply, such as "230 V ac" or "24 V dc"
 * @param ratedW power at full use (W)
 * @param idleW power when idle (W); {@code null} if not known
 * @param inrushA peak current when switched on (A); {@code null} if not known
 * @param heatW heat into the room at full use (W); {@code null}: all of the rated power
 */
public record Power(
        String supply,
        double ratedW,
        @Nullable Double idleW,
        @Nullable Double inrushA,
        @Nullable Double heatW) {
    public Power {
        Figures.notNegative("rated power (W)", ratedW);
    }
}

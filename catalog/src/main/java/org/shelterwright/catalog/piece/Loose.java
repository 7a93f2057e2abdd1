package org.shelterwright.catalog.piece;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.source.Figures;
import org.shelterwright.catalog.space.Millimetres;

/**
 * How a loose piece is stowed.
 *
 * @param fragile true if nothing may lie on it
 * @param upright true if it must not be laid over
 * @param leastC lowest temperature that it bears (°C); {@code null} if any
 * @param mostC highest temperature that it bears (°C); {@code null} if any
 * @param goods {@code null} if it is no dangerous goods
 * @param urgency how fast it must be at hand
 * @param grip room for fingers at two sides (µm); 0 if it has a handle of its own; {@code null}: as the rules say
 */
public record Loose(
        boolean fragile,
        boolean upright,
        @Nullable Double leastC,
        @Nullable Double mostC,
        @Nullable DangerousGoods goods,
        Urgency urgency,
        @Nullable @Millimetres Integer grip) {
    public Loose {
        if (leastC != null) {
            Figures.within("lowest temperature (°C)", leastC, -200, 200);
        }
        if (mostC != null) {
            Figures.within("highest temperature (°C)", mostC, leastC == null ? -200 : leastC, 200);
        }
        if (grip != null && grip < 0) {
            throw new IllegalArgumentException("The room to grip must not be below zero.");
        }
    }
}

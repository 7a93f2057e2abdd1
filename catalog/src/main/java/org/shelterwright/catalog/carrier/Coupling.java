package org.shelterwright.catalog.carrier;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Point;

/**
 * Where a truck and a trailer are coupled.
 *
 * @param at in the frame of the carrier
 * @param verticalRatingKg vertical load that it bears (kg); {@code null} if not known
 * @param leastVerticalKg least vertical load of a trailer's coupling (kg); {@code null} if none is set
 * @param drawnRatingKg mass of the trailer that may be drawn (kg); {@code null} if not known
 */
public record Coupling(
        Point at,
        @Nullable Double verticalRatingKg,
        @Nullable Double leastVerticalKg,
        @Nullable Double drawnRatingKg) {}

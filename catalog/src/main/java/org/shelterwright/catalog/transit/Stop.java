package org.shelterwright.catalog.transit;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Face;

/**
 * A wall, end or row of stanchions that a load may lean on.
 *
 * @param side of the car
 * @param ratingN what it bears spread over it (N)
 * @param payloadShare the same as a share of the weight of the payload, where a standard states it so
 */
public record Stop(
        Face side, @Nullable Double ratingN, @Nullable Double payloadShare) {
    /** What it bears (N); {@code null} if it cannot be told. */
    public @Nullable Double bearsN(@Nullable Double payloadKg, double gravity) {
        if (ratingN != null || payloadShare == null || payloadKg == null) {
            return ratingN;
        }
        return payloadShare * payloadKg * gravity;
    }
}

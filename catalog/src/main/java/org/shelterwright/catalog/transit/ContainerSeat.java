package org.shelterwright.catalog.transit;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Millimetres;

/**
 * Where a freight container stands on spigots or twist locks.
 *
 * @param x rear end of the container, in the frame of the car
 * @param length of the container (µm)
 * @param spigotN sideways or lengthways load that one spigot bears (N)
 * @param upN load up that one locks against (N); {@code null} if it does not lock
 */
public record ContainerSeat(
        String name,
        @Millimetres int x,
        @Millimetres int length,
        @Nullable Double spigotN,
        @Nullable Double upN) {}

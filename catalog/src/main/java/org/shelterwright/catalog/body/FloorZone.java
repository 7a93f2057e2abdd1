package org.shelterwright.catalog.body;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Rect;

/**
 * A part of the floor with its ratings. What is not known is {@code null}.
 *
 * @param pressureKPa pressure under any contact patch (kPa)
 * @param uniformKPa load of the zone over its whole area (kPa)
 * @param concentratedKg mass on any one patch (kg)
 * @param perMetreKg mass on any running metre along x, over the width of the zone (kg/m)
 */
public record FloorZone(
        String name,
        Rect area,
        @Nullable Double pressureKPa,
        @Nullable Double uniformKPa,
        @Nullable Double concentratedKg,
        @Nullable Double perMetreKg) {}

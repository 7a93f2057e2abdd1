package org.shelterwright.layouts.asbuilt;

import org.jspecify.annotations.Nullable;

/**
 * A mass and its centre, each with half the width of its range.
 *
 * @param xM along the body (m)
 * @param yM across the body (m)
 * @param zM above the floor (m); {@code null} if not known
 * @param zRangeM half width of the range of the height (m); 0 if it is not known
 */
public record Balance(
        double kg,
        double kgRange,
        double xM,
        double xRangeM,
        double yM,
        double yRangeM,
        @Nullable Double zM,
        double zRangeM) {}

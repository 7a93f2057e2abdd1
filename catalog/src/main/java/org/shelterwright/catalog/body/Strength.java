package org.shelterwright.catalog.body;

import org.jspecify.annotations.Nullable;

/**
 * What a hard point bears, per fixing. What is not known is {@code null}.
 *
 * @param pullOutN square to the surface (N)
 * @param shearN along the surface (N)
 * @param pullOutPerMetreN in all on one metre of it, square to the surface (N)
 */
public record Strength(
        @Nullable Double pullOutN,
        @Nullable Double shearN,
        @Nullable Double pullOutPerMetreN) {}

package org.shelterwright.catalog.body;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Millimetres;

/**
 * A beam under the floor, across the body, simply supported at two places.
 *
 * @param x its place along the body (µm)
 * @param support0 its right support (µm, y)
 * @param support1 its left support (µm, y)
 * @param momentNm bending moment that it bears (N·m); {@code null} if not known
 * @param shearN shear that it bears (N); {@code null} if not known
 */
public record CrossMember(
        String name,
        @Millimetres int x,
        @Millimetres int support0,
        @Millimetres int support1,
        @Nullable Double momentNm,
        @Nullable Double shearN) {
    public CrossMember {
        if (support1 <= support0) {
            throw new IllegalArgumentException("The left support of \"" + name + "\" must lie left of the right one.");
        }
    }
}

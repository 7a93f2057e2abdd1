package org.shelterwright.layouts.brief;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Millimetres;

/**
 * Something that is wanted of a layout but not required.
 *
 * @param units ids of the units concerned, in order where the order matters
 * @param distance wanted distance (µm) of {@code NEAR} (at most) and {@code APART} (at least); {@code null} otherwise
 * @param face wall of {@code ALONG_WALL} and {@code ORDER_ALONG_WALL}, direction of {@code FACING}; {@code null} otherwise
 */
public record Wish(
        Kind kind,
        List<String> units,
        @Nullable @Millimetres Integer distance,
        @Nullable Face face) {
    public Wish {
        units = List.copyOf(units);
    }

    /** What is wanted. */
    public enum Kind {
        /** The outlines of all named units lie at most the distance from the first. */
        NEAR,
        /** The outlines of the named units lie at least the distance from each other. */
        APART,
        /** All named units stand on the same side of the middle of the body. */
        SAME_SIDE,
        /** The fronts of all named units look to the given side. */
        FACING,
        /** The named units touch the given wall. */
        ALONG_WALL,
        /** The named units follow each other along the given wall, from rear to front or from right to left. */
        ORDER_ALONG_WALL;

        /** Least number of units that it makes sense for. */
        public int leastUnits() {
            return this == FACING || this == ALONG_WALL ? 1 : 2;
        }
    }
}

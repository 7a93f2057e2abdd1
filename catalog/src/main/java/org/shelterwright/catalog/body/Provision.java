package org.shelterwright.catalog.body;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Point;

/**
 * An eye, fitting, pocket or pad by which a body or carrier is lifted, tied down or stood on.
 *
 * @param at in the frame of what it belongs to; of a fork pocket the middle of its mouth, of a pad its underside
 * @param ratingN working load (N); {@code null} if not known
 */
public record Provision(
        String name, Use use, Point at, @Nullable Double ratingN) {
    /** What a provision is for. */
    public enum Use {
        LIFTING,
        TIE_DOWN,
        BOTH,
        /** Where a fork of an industrial truck goes in, across the body. */
        FORK_POCKET,
        /** Where a stand or jack carries the body while it is off its carrier. */
        STAND
    }
}

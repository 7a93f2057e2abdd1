package org.shelterwright.catalog.body;

import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.space.Point;

/**
 * An eye or fitting by which a body or carrier is lifted or tied down.
 *
 * @param at in the frame of what it belongs to
 * @param ratingN working load (N); {@code null} if not known
 */
public record Provision(
        String name, Use use, Point at, @Nullable Double ratingN) {
    /** What a provision is for. */
    public enum Use {
        LIFTING,
        TIE_DOWN,
        BOTH
    }
}

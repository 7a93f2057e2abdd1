package org.shelterwright.catalog.sliding;

import java.util.BitSet;
import java.util.List;
import org.shelterwright.catalog.space.Point;

/**
 * Whether, and how, something slides out.
 *
 * @param free true if the goal is reached
 * @param path shifts from the start to the goal, each differing from the one before on one axis only; empty if not free
 * @param frontier owners of what bounds the space that can be reached; empty if free. While all of them stay, it stays
 *     stuck; an empty frontier without a way means that fixed obstacles alone are the reason
 */
public record Slide(boolean free, List<Point> path, BitSet frontier) {
    public Slide {
        path = List.copyOf(path);
        frontier = (BitSet) frontier.clone();
    }

    @Override
    public BitSet frontier() {
        return (BitSet) frontier.clone();
    }
}

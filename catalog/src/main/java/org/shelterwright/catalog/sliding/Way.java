package org.shelterwright.catalog.sliding;

import java.util.BitSet;
import java.util.List;

/**
 * Whether, and how, something gets from its place into a target.
 *
 * @param free true if the target is reached
 * @param stages from the start to the target; empty if not free
 * @param frontier owners of what bounds the space that can be reached; empty if free. While all of them stay, it stays
 *     stuck; an empty frontier without a way means that fixed obstacles alone are the reason
 */
public record Way(boolean free, List<Stage> stages, BitSet frontier) {
    public Way {
        stages = List.copyOf(stages);
        frontier = (BitSet) frontier.clone();
    }

    static Way stuck(BitSet frontier) {
        return new Way(false, List.of(), frontier);
    }

    @Override
    public BitSet frontier() {
        return (BitSet) frontier.clone();
    }

    /** Whether it turns on the way. */
    public boolean turns() {
        return stages.stream().anyMatch(stage -> stage.quarters() != 0);
    }
}

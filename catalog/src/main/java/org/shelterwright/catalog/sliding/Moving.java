package org.shelterwright.catalog.sliding;

import java.util.BitSet;
import java.util.List;
import org.shelterwright.catalog.space.Box;

/** A question for the way of a thing out of a place, asked many times with this or that taken away. */
public sealed interface Moving permits WayQuery, TiltQuery {
    /** Owners of what it overlaps where it is now; {@link Obstacle#FIXED} stands for what is always there. */
    List<Integer> overlapped(BitSet gone);

    /**
     * Asks for a way.
     *
     * @param gone owners that are taken away
     * @throws IllegalArgumentException if it overlaps something where it is now, or lies outside the region
     */
    Way ask(BitSet gone);

    /** The cuboids of the thing at a stage of a way. */
    List<Box> at(Stage stage);

    /** Cuboids that hold all that the thing passes through between two stages that follow each other. */
    List<Box> swept(Stage from, Stage to);
}

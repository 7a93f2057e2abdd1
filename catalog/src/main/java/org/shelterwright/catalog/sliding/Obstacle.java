package org.shelterwright.catalog.sliding;

import org.shelterwright.catalog.space.Box;

/**
 * A cuboid in the way.
 *
 * @param owner number of the thing that it is part of, from zero; things can be taken away. {@link #FIXED} cannot
 */
public record Obstacle(Box box, int owner) {
    /** Owner of what is always there, such as walls. */
    public static final int FIXED = -1;

    public Obstacle {
        if (owner < FIXED) {
            throw new IllegalArgumentException("The owner " + owner + " must be a number from zero, or FIXED.");
        }
    }
}

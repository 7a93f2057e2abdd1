package org.shelterwright.solver.load.model;

import org.shelterwright.catalog.space.Box;

/**
 * A piece in its place.
 *
 * @param kind index of its kind in the problem, from 0
 * @param box where it stands, in the frame of the room
 */
public record Stowed(int kind, Box box) {
    /** Volume in cubed units of length. */
    public double volume() {
        return (double) (box.x1() - box.x0()) * (box.y1() - box.y0()) * (box.z1() - box.z0());
    }
}

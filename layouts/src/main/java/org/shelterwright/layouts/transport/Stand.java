package org.shelterwright.layouts.transport;

import org.shelterwright.catalog.space.Pose;

/**
 * Where a piece, or a container with its own load, stands on a car.
 *
 * @param what id of the piece or load
 * @param pose low corner of its turned size, in the frame of the car
 * @param pinned whether a search leaves it where it is
 */
public record Stand(String what, Pose pose, boolean pinned) {
    public Stand with(Pose other) {
        return new Stand(what, other, pinned);
    }
}

package org.shelterwright.solver.transport;

import java.util.List;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.layouts.transport.Stand;
import org.shelterwright.layouts.transport.scene.Shape;

/** Packs crates into a car that has walls: a container, a covered wagon, a hold. */
@FunctionalInterface
public interface CratePacker {
    /**
     * What is to be packed.
     *
     * @param space where crates may go, in the frame of the car
     * @param crates in the order in which they are unloaded last to first, where that matters
     * @param loadKg the most that they may weigh together (kg)
     */
    record Ask(TransitCar car, Box space, List<Shape> crates, double loadKg, long seed) {
        public Ask {
            crates = List.copyOf(crates);
        }
    }

    /**
     * Finds places.
     *
     * @return a stand for each crate that found a place, each with full support; those that found none are left out
     */
    List<Stand> pack(Ask ask);
}

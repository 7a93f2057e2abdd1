package org.shelterwright.solver.transport;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.shelterwright.catalog.transit.TransitCar;
import org.shelterwright.layouts.rules.Rules;
import org.shelterwright.layouts.transport.Stand;
import org.shelterwright.layouts.transport.scene.Shape;

/** Packs crates into a car that has walls: a container, a covered wagon, a hold. */
@FunctionalInterface
public interface CratePacker {
    /**
     * What is to be packed.
     *
     * @param rules of the leg: play of doorways, places of the centre, ratios
     * @param loadKg the most that the crates may weigh together (kg)
     * @param stops number of the stop at which each crate is taken off, 1 the first, by its id
     * @param apart ids of crates that may not ride in the same car, by id
     */
    record Ask(
            TransitCar car,
            Rules rules,
            List<Shape> crates,
            double loadKg,
            Map<String, Integer> stops,
            Map<String, Set<String>> apart,
            long seed) {
        public Ask {
            crates = List.copyOf(crates);
            stops = Map.copyOf(stops);
            apart = Map.copyOf(apart);
        }
    }

    /**
     * Finds places.
     *
     * @return a stand for each crate that found a place; those that found none are left out
     */
    List<Stand> pack(Ask ask);
}

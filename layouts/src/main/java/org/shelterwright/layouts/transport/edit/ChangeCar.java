package org.shelterwright.layouts.transport.edit;

import org.shelterwright.layouts.transport.Journey;

/**
 * Takes another car for a load; what stands on it keeps its places, and lashings keep the names of their anchor points.
 *
 * @param load id of the load
 * @param car id of the transit car; that there is one is asked when the journey is resolved
 */
public record ChangeCar(String load, String car) implements JourneyEdit {
    @Override
    public String name() {
        return "Take " + car + " for " + load;
    }

    @Override
    public Journey apply(Journey journey) {
        return journey.with(Loads.named(journey, load).withCar(car));
    }
}

package org.shelterwright.layouts.transport.edit;

import org.shelterwright.layouts.transport.Journey;

/**
 * Takes a piece or container off its car, with what holds it.
 *
 * @param load id of the load
 * @param what id of the piece or load
 */
public record TakeOff(String load, String what) implements JourneyEdit {
    @Override
    public String name() {
        return "Take off " + what;
    }

    @Override
    public Journey apply(Journey journey) {
        return journey.with(Loads.without(Loads.requireUnder(journey, load, what), what));
    }
}

package org.shelterwright.layouts.state;

/**
 * Something that a load state sets freely: a tank between its least and its full mass, or the crew, aboard or not.
 *
 * @param name as it stands in the name of a state, such as "fuel tank of Heater"
 * @param crew true for the people in the cab
 */
public record Fill(String name, boolean crew) {
    static final Fill CREW = new Fill("crew", true);

    /** A tank of a unit, or of the trailer. */
    static Fill tank(String tank, String owner) {
        return new Fill(tank + " of " + owner, false);
    }
}

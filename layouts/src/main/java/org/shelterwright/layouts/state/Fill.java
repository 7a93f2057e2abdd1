package org.shelterwright.layouts.state;

/**
 * Something that a load state sets freely: a tank between its least and its full mass, the crew, or a person inside the
 * body, aboard or not.
 *
 * @param name as it stands in the name of a state, such as "fuel tank of Heater"; of a person, the name of the unit
 */
public record Fill(String name, Kind kind) {
    static final Fill CREW = new Fill("crew", Kind.CREW);

    /** What it is. */
    public enum Kind {
        TANK,
        /** The people in the cab. */
        CREW,
        /** A person inside the body. */
        OCCUPANT
    }

    /** A tank of a unit, or of the trailer. */
    public static Fill tank(String tank, String owner) {
        return new Fill(tank + " of " + owner, Kind.TANK);
    }

    /** A person at a unit of the body. */
    public static Fill occupant(String unit) {
        return new Fill(unit, Kind.OCCUPANT);
    }
}

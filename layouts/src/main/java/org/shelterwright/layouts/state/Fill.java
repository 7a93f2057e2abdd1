package org.shelterwright.layouts.state;

import org.jspecify.annotations.Nullable;

/**
 * Something that a load state sets freely: a tank between its least and its full mass, or the crew, aboard or not.
 *
 * @param what such as "fuel tank"
 * @param owner name of the unit that it belongs to; {@code null} if it is the carrier's
 * @param crew true for the people in the cab
 */
public record Fill(String what, @Nullable String owner, boolean crew) {
    static final Fill CREW = new Fill("crew", null, true);

    /** As it stands in the name of a state, such as "fuel tank of Heater". */
    public String name() {
        return owner == null ? what : what + " of " + owner;
    }
}

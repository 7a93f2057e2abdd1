package org.shelterwright.layouts.brief;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Which supply a unit draws from, and when. In every state whose supply is live it is on, unless it is idle or off there.
 *
 * @param unit id of the unit; of a unit that converts, it says how that is connected to what feeds it
 * @param supply id of the supply
 * @param phase 1, 2 or 3, of a supply of three phases; {@code null} if not stated, or if the unit takes all three
 * @param idle ids of the states in which it is idle
 * @param off ids of the states in which it is off
 * @param needed ids of the states in which it must be on
 */
public record Feed(
        String unit, String supply, @Nullable Integer phase, List<String> idle, List<String> off, List<String> needed) {
    public Feed {
        idle = List.copyOf(idle);
        off = List.copyOf(off);
        needed = List.copyOf(needed);
        if (phase != null && (phase < 1 || phase > 3)) {
            throw new IllegalArgumentException("The phase of unit \"" + unit + "\", " + phase + ", must be 1, 2 or 3.");
        }
    }
}

package org.shelterwright.layouts.handling;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.shelterwright.catalog.item.PartOff;
import org.shelterwright.layouts.inside.InRack;

/**
 * In what state a unit is brought in.
 *
 * @param filled its rack-mounted pieces that are fitted on the bench before, lowest first
 * @param later its rack-mounted pieces that are fitted at its place, since it is too heavy with them
 * @param stowed how many loose pieces ride in it; they come in when all is bolted
 * @param off parts that are off while it is brought in
 * @param handling how it is moved so; {@code null} if its mass is not known
 */
public record Carried(
        List<InRack> filled,
        List<InRack> later,
        int stowed,
        List<PartOff> off,
        @Nullable Handling handling) {
    public Carried {
        filled = List.copyOf(filled);
        later = List.copyOf(later);
        off = List.copyOf(off);
    }
}

package org.shelterwright.layouts.brief;

import java.util.List;

/**
 * A trailer that goes with the carrier of a brief.
 *
 * @param carrier id of its catalog entry
 */
public record Trailer(String carrier, List<TrailerLoad> loads) {
    public Trailer {
        loads = List.copyOf(loads);
    }
}

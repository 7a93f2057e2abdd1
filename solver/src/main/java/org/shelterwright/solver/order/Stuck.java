package org.shelterwright.solver.order;

import java.util.List;

/**
 * A unit that no order brings in.
 *
 * @param unit its id
 * @param blockers ids of units of which none may stay where it is if it is to come in; empty if the body itself is in the way
 * @param sentence what, why, and what would help
 */
public record Stuck(String unit, List<String> blockers, String sentence) {
    public Stuck {
        blockers = List.copyOf(blockers);
    }
}

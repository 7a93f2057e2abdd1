package org.shelterwright.solver.order;

import java.util.List;
import org.shelterwright.layouts.layout.BoltDownOrder;

/**
 * What the search for an order found.
 *
 * @param order the order of all that can be brought in, with the wishes as asked
 * @param reasons why each step stands where it does, as many as the order has steps
 * @param stuck what cannot be brought in; empty if the order is complete
 * @param circles demands that contradict each other, one sentence a circle
 * @param handOnly ids of units whose fixings tools do not reach in any order that brings everything in
 * @param asked how many ways were looked for
 */
public record FoundOrder(
        BoltDownOrder order,
        List<String> reasons,
        List<Stuck> stuck,
        List<String> circles,
        List<String> handOnly,
        long asked) {
    public FoundOrder {
        reasons = List.copyOf(reasons);
        stuck = List.copyOf(stuck);
        circles = List.copyOf(circles);
        handOnly = List.copyOf(handOnly);
    }

    /** An order that was there already. */
    public static FoundOrder kept(BoltDownOrder order) {
        return new FoundOrder(order, List.of(), List.of(), List.of(), List.of(), 0);
    }

    public boolean complete() {
        return stuck.isEmpty();
    }
}

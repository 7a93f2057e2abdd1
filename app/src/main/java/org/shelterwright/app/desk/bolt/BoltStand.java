package org.shelterwright.app.desk.bolt;

import org.jspecify.annotations.Nullable;
import org.shelterwright.layouts.boltdown.BoltDownPlan;
import org.shelterwright.solver.order.FoundOrder;
import org.shelterwright.solver.order.Schedule;

/**
 * How bolting down stands. Immutable.
 *
 * @param plan the steps of the layout's order; {@code null} if it has none, or they are still worked out
 * @param schedule who does what when; {@code null} as the plan
 * @param found what the last search for an order of this layout found; {@code null} if none was made
 * @param working whether something is worked out that will replace what is shown
 * @param refusal why the last change of the order was not made; empty if it was
 */
record BoltStand(
        @Nullable BoltDownPlan plan,
        @Nullable Schedule schedule,
        @Nullable FoundOrder found,
        boolean working,
        String refusal) {
    static final BoltStand NONE = new BoltStand(null, null, null, false, "");

    /** Number of steps; zero without a plan. */
    int steps() {
        return plan == null ? 0 : plan.steps().size();
    }

    BoltStand at(@Nullable BoltDownPlan other, @Nullable Schedule others) {
        return new BoltStand(other, others, found, false, refusal);
    }

    BoltStand busy() {
        return new BoltStand(plan, schedule, found, true, "");
    }

    BoltStand with(FoundOrder other) {
        return new BoltStand(plan, schedule, other, working, "");
    }

    BoltStand refused(String sentence) {
        return new BoltStand(plan, schedule, found, false, sentence);
    }
}

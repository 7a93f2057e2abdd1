package org.shelterwright.solver.route.net;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Ways for all strands.
 *
 * @param ways links of each strand in order; {@code null} if it has none
 * @param cost sum of the costs of all
 * @param bound no ways within the capacities cost less; of strands that have a way at all
 * @param within whether no link holds more than it may
 * @param rounds rounds of negotiation
 */
public record Ways(List<int @Nullable []> ways, long cost, long bound, boolean within, int rounds) {
    public Ways {
        ways = Collections.unmodifiableList(new ArrayList<>(ways));
    }

    /** How far the cost may be above the least, as a share of the bound. */
    public double gap() {
        return bound == 0 ? 0 : Math.max(0, (cost - bound) / (double) bound);
    }
}

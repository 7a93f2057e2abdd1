package org.shelterwright.layouts.ledger.mend;

import org.jspecify.annotations.Nullable;

/** Which of several states makes the row: one that breaks the limit, else one that cannot be answered, else the greatest use. */
public final class Rank {
    private static final double BROKEN = 1e9;
    private static final double OPEN = 1e6;

    private Rank() {}

    /**
     * Ranks a state; the highest makes the row.
     *
     * @param needed what it needs
     * @param there what there is; {@code null} if not known
     * @param open whether something is missing to be sure of what it needs
     */
    public static double of(double needed, @Nullable Double there, boolean open) {
        if (there == null) {
            return OPEN;
        }
        double use = there > 0 ? needed / there : needed > 0 ? OPEN : 0;
        return use > 1 ? BROKEN + use : open ? OPEN : use;
    }
}

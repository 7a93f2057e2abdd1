package org.shelterwright.solver.fit.kernel;

import org.jspecify.annotations.Nullable;
import org.shelterwright.solver.fit.model.Amounts;
import org.shelterwright.solver.fit.model.Spot;

/** The best state of a lane so far. */
public final class Best {
    private @Nullable Amounts score;
    private @Nullable Spot @Nullable [] spots;

    /** Keeps the state if it is better than the best so far. */
    public boolean offer(State state) {
        Amounts now = state.score();
        Amounts before = score;
        if (before != null && now.compareTo(before) >= 0) {
            return false;
        }
        score = now;
        spots = state.spots();
        return true;
    }

    /** Takes over what another has. */
    public void take(Best other) {
        score = other.score;
        spots = other.spots;
    }

    public @Nullable Amounts score() {
        return score;
    }

    public @Nullable Spot @Nullable [] spots() {
        return spots;
    }
}

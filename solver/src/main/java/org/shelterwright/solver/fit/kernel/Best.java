package org.shelterwright.solver.fit.kernel;

import org.jspecify.annotations.Nullable;
import org.shelterwright.solver.fit.FitScore;
import org.shelterwright.solver.fit.model.Spot;

/** The best state of a lane so far. */
public final class Best {
    private @Nullable FitScore score;
    private @Nullable Spot @Nullable [] spots;

    /** Keeps the state if it is better than the best so far. */
    public boolean offer(State state) {
        FitScore now = state.score();
        FitScore before = score;
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

    public @Nullable FitScore score() {
        return score;
    }

    public @Nullable Spot @Nullable [] spots() {
        return spots;
    }
}

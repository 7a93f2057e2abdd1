package org.shelterwright.solver.bench;

import org.jspecify.annotations.Nullable;
import org.shelterwright.solver.fit.kernel.Construction;
import org.shelterwright.solver.fit.kernel.Dice;
import org.shelterwright.solver.fit.kernel.State;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.Spot;

/** The greedy start that all ways to search share: the first construction of the search itself. */
public final class Start {
    private Start() {}

    /** Places every unit greedily, the hardest first. */
    public static @Nullable Spot[] greedy(FitProblem problem, long seed) {
        State state = new State(problem);
        new Construction(state, Dice.of(seed, 0)).placeAll(0);
        return state.spots();
    }
}

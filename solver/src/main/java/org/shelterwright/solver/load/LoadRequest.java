package org.shelterwright.solver.load;

import org.shelterwright.solver.fit.Budget;
import org.shelterwright.solver.load.model.LoadProblem;

/**
 * What a search for a load shall find.
 *
 * @param budget how long it may go on; a move is one space looked at
 * @param lanes independent searches, of which the best counts
 * @param threads threads that share the lanes; the answer does not depend on it when the budget is in moves
 */
public record LoadRequest(LoadProblem problem, long seed, Budget budget, int lanes, int threads) {
    /** Moves of a search for which nobody set a budget: some seconds on one core. */
    public static final long USUAL_MOVES = 3_000_000;

    public LoadRequest {
        if (threads < 1 || lanes < 1) {
            throw new IllegalArgumentException("A search needs at least one thread and one lane.");
        }
    }

    /** One lane on one thread. */
    public static LoadRequest single(LoadProblem problem, long seed, Budget budget) {
        return new LoadRequest(problem, seed, budget, 1, 1);
    }
}

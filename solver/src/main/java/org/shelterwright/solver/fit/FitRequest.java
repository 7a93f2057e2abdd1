package org.shelterwright.solver.fit;

import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Provenance;

/**
 * What a search shall find.
 *
 * @param start brief and parts; its placements are kept where pinned and otherwise taken as a first idea
 * @param threads threads that share the lanes; the answer does not depend on it when the budget is in moves
 * @param alternatives how many truly different layouts are wanted, the best included
 */
public record FitRequest(Layout start, long seed, Budget budget, int threads, int alternatives) {
    public FitRequest {
        if (threads < 1 || alternatives < 1) {
            throw new IllegalArgumentException("A search needs at least one thread and one alternative.");
        }
    }

    /** The same from another start. */
    FitRequest from(Layout other) {
        return new FitRequest(other, seed, budget, threads, alternatives);
    }

    /**
     * What a layout that came of this request says of its origin. A search that was stopped or ran on time cannot be
     * repeated by its moves.
     *
     * @param program version of the program
     */
    public Provenance provenance(String program, boolean stopped) {
        boolean repeatable = !stopped && budget.time() == null;
        return new Provenance(program, seed, repeatable ? budget.moves() : null);
    }
}

package org.shelterwright.solver.load.lane;

import org.shelterwright.solver.load.model.LoadProblem;
import org.shelterwright.solver.load.model.Support;
import org.shelterwright.solver.load.space.SpaceRule;

/**
 * Parameters of the search, as they were measured best.
 *
 * @param leastFill least share of a block's cuboid that its pieces fill
 * @param mostBlocks how many blocks are made
 * @param alpha power of the contact
 * @param gamma power of the number of pieces
 * @param beamShare share of the work for the beam; the rest is for refilling
 */
public record Tuning(double leastFill, int mostBlocks, double alpha, double gamma, SpaceRule rule, double beamShare) {
    private static final int LEAST_BLOCKS = 200;
    private static final int MOVES_A_BLOCK = 20;

    /**
     * What is taken for a problem.
     *
     * @param moves spaces that may be looked at, or how many a time allows about; for few of them, fewer blocks are made,
     *     since making one takes as long as looking at some twenty spaces
     */
    public static Tuning of(LoadProblem problem, long moves) {
        int blocks = (int) Math.min(10_000, Math.max(LEAST_BLOCKS, moves / MOVES_A_BLOCK));
        if (problem.support() == Support.NONE) {
            return new Tuning(0.98, blocks, 2, 0.2, SpaceRule.NEAREST, 1);
        }
        SpaceRule rule = problem.practice().byStops() ? SpaceRule.FOREMOST : SpaceRule.LOWEST;
        return new Tuning(0.99, Math.min(5_000, blocks), 0.7, 0.4, rule, 0.25);
    }
}

package org.shelterwright.solver.fit.kernel;

/**
 * One round of annealing: temperature falls and prices rise, both by a constant factor a move.
 *
 * @param moves length of the round
 * @param hot temperature at its beginning (mm)
 * @param cold temperature at its end (mm)
 * @param cheap prices at its beginning
 * @param dear prices at its end
 */
public record Schedule(long moves, double hot, double cold, Weights cheap, Weights dear) {
    /** Temperature when a share of the round is over. */
    double temperature(double share) {
        return hot * Math.pow(cold / hot, share);
    }

    /** Prices when a share of the round is over. */
    Weights weights(double share) {
        return new Weights(
                cheap.hard() * Math.pow(dear.hard() / cheap.hard(), share),
                cheap.medium() * Math.pow(dear.medium() / cheap.medium(), share));
    }
}

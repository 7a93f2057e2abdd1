package org.shelterwright.solver.fit.kernel;

/**
 * What a millimetre of each level costs.
 *
 * @param hard price of what cannot be built
 * @param medium price of what cannot be reached
 */
public record Weights(double hard, double medium) {
    /** Prices at which no saving on wishes pays for a broken limit. */
    public static final Weights STRICT = new Weights(1000, 300);

    /** The cost of amounts (µm) of the three levels (mm). */
    double cost(double hardAmount, double mediumAmount, double softAmount) {
        return 1e-3 * (hard * hardAmount + medium * mediumAmount + softAmount);
    }
}

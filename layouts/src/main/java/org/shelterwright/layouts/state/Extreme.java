package org.shelterwright.layouts.state;

/**
 * The most or the least that a quantity comes to.
 *
 * @param worst with every uncertainty in the adverse direction
 * @param nominal in the same load state, with growth but without uncertainty
 * @param state the load state that governs
 */
public record Extreme(double worst, double nominal, LoadState state) {
    Extreme negated() {
        return new Extreme(-worst, -nominal, state);
    }

    public Extreme times(double factor) {
        return new Extreme(worst * factor, nominal * factor, state);
    }
}

package org.shelterwright.solver.fit;

/** Finds places for the units of a brief. */
public interface Fitter {
    /**
     * Searches until the budget is used up or the signal asks to stop.
     *
     * @throws IllegalArgumentException if the brief asks for something that no search can judge, such as an unknown unit
     *     in a wish
     */
    FitResult fit(FitRequest request, FitObserver observer, StopSignal stop);

    /** The same without looking for the reasons why nothing holds, which takes further searches. */
    default Fitter withoutReasons() {
        return this;
    }
}

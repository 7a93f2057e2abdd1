package org.shelterwright.solver.load.cars;

import java.time.Duration;
import java.util.List;
import org.shelterwright.solver.load.model.Load;
import org.shelterwright.solver.load.model.Stowed;

/**
 * Loads of several equal cars.
 *
 * @param loads one for each car, the first loaded first
 * @param atLeast as many cars are needed however they are loaded
 * @param leftOver names of the kinds of which nothing fits a car, even alone
 */
public record CarsResult(List<Load> loads, int atLeast, List<String> leftOver, Duration elapsed) {
    public CarsResult {
        loads = List.copyOf(loads);
        leftOver = List.copyOf(leftOver);
    }

    /** Pieces in all cars. */
    public int pieces() {
        return loads.stream().map(Load::stowed).mapToInt(List<Stowed>::size).sum();
    }
}

package org.shelterwright.solver.bench;

import org.shelterwright.solver.fit.planted.PlantedFit;

/**
 * A planted fit to compare on.
 *
 * @param slack share of the walls that the known solution leaves free
 * @param atOdds whether its wishes are at odds with each other, or all kept by the known solution
 */
record PlantedCase(int units, double slack, boolean atOdds) {
    PlantedFit fit(long seed) {
        PlantedFit fit = PlantedFit.of(seed, units, slack).withoutWalkways();
        return atOdds ? fit.withWishesAtOdds(seed) : fit.withWishes();
    }

    String free() {
        return Math.round(100 * slack) + " %";
    }

    String wishes() {
        return atOdds ? "at odds" : "kept";
    }
}

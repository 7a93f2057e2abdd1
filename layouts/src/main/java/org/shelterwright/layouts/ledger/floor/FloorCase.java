package org.shelterwright.layouts.ledger.floor;

import org.shelterwright.layouts.scene.PlacedUnit;

/**
 * What presses on the floor in one load state: patches with their edges (µm) and loads (kg).
 *
 * @param units the unit of each patch
 * @param worst loads with every mass at the upper end of its range
 * @param nominal loads with growth and without uncertainty
 * @param off what a patch may bear more since centres of mass are uncertain
 * @param edgesX the numbers of all patch edges along x in their order: 2k for the low one of patch k, 2k + 1 for its high one
 * @param edgesY the same along y
 * @param state the load state in words
 */
record FloorCase(
        PlacedUnit[] units,
        int[] x0,
        int[] x1,
        int[] y0,
        int[] y1,
        double[] worst,
        double[] nominal,
        double[] off,
        int[] edgesX,
        int[] edgesY,
        String state) {
    int patches() {
        return units.length;
    }

    /** Area of a patch (m²). */
    double area(int patch) {
        return (x1[patch] - x0[patch]) * 1e-6 * ((y1[patch] - y0[patch]) * 1e-6);
    }
}

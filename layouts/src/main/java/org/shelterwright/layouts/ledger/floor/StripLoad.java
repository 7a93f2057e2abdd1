package org.shelterwright.layouts.ledger.floor;

import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Rect;

/**
 * The heaviest running metre of a floor zone: the window of 1 m along x (or the zone, if it is shorter) over the width of the zone
 * that bears most. Loads are even over each patch, so that what a window bears changes linearly between the places where one of
 * its ends meets an edge of a patch: the most is at one of these places.
 *
 * @param kg what the window bears (kg)
 * @param from where it begins (µm)
 */
record StripLoad(double kg, int from) {
    /** Cost: the number of patches times the number of their edges in the zone. */
    static StripLoad heaviest(Rect zone, FloorCase load, double[] loads) {
        int window = Math.min(Lengths.M, zone.x1() - zone.x0());
        int count = 0;
        int patches = load.patches();
        int[] x0 = new int[patches];
        int[] x1 = new int[patches];
        double[] perUm = new double[patches];
        for (int k = 0; k < patches; k++) {
            long width = Math.min(load.y1()[k], zone.y1()) - (long) Math.max(load.y0()[k], zone.y0());
            int low = Math.max(load.x0()[k], zone.x0());
            int high = Math.min(load.x1()[k], zone.x1());
            if (width > 0 && high > low && loads[k] > 0) {
                x0[count] = low;
                x1[count] = high;
                perUm[count] =
                        loads[k] * ((double) width / (load.y1()[k] - load.y0()[k])) / (load.x1()[k] - load.x0()[k]);
                count++;
            }
        }
        StripLoad most = new StripLoad(0, zone.x0());
        for (int k = 0; k < count; k++) {
            most = better(most, x0[k], zone, window, x0, x1, perUm, count);
            most = better(most, x1[k] - window, zone, window, x0, x1, perUm, count);
        }
        return most;
    }

    private static StripLoad better(
            StripLoad most, int at, Rect zone, int window, int[] x0, int[] x1, double[] perUm, int count) {
        int from = Math.max(zone.x0(), Math.min(at, zone.x1() - window));
        int to = from + window;
        double kg = 0;
        for (int k = 0; k < count; k++) {
            int shared = Math.min(x1[k], to) - Math.max(x0[k], from);
            if (shared > 0) {
                kg += perUm[k] * shared;
            }
        }
        return kg > most.kg() ? new StripLoad(kg, from) : most;
    }
}

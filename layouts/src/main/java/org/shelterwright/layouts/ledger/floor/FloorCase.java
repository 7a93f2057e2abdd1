package org.shelterwright.layouts.ledger.floor;

import java.util.Arrays;
import java.util.List;
import org.shelterwright.catalog.space.Rect;
import org.shelterwright.layouts.scene.PlacedUnit;

/**
 * What presses on the floor in one load state: patches with their edges (µm) and loads (kg).
 *
 * @param units the unit of each patch
 * @param people whether a patch is not a contact patch but the floor that a person stands on
 * @param worst loads with every mass at the upper end of its range
 * @param nominal loads with growth and without uncertainty
 * @param off what a patch may bear more since centres of mass are uncertain
 * @param edgesX the numbers of all patch edges along x in their order: 2k for the low one of patch k, 2k + 1 for its high one
 * @param edgesY the same along y
 * @param state the load state in words
 */
record FloorCase(
        PlacedUnit[] units,
        boolean[] people,
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
    /** All contents at their least. */
    static FloorCase low(List<Standing> standings, String state) {
        int patches = 0;
        for (Standing one : standings) {
            patches += one.footing().patches().size();
        }
        PlacedUnit[] owners = new PlacedUnit[patches];
        boolean[] people = new boolean[patches];
        int[][] edges = new int[4][patches];
        double[][] loads = new double[2][patches];
        double[] off = new double[patches];
        int at = 0;
        for (Standing one : standings) {
            one.loads(0, loads[0], loads[1], at);
            PressurePlane plane = one.footing().plane();
            for (int k = 0; plane != null && k < plane.patches(); k++) {
                Rect patch = one.footing().patches().get(k);
                owners[at] = one.owner();
                people[at] = one.person();
                off[at] = plane.perMetreOff(k) * one.off();
                edges[0][at] = patch.x0();
                edges[1][at] = patch.x1();
                edges[2][at] = patch.y0();
                edges[3][at] = patch.y1();
                at++;
            }
        }
        return new FloorCase(
                owners,
                people,
                edges[0],
                edges[1],
                edges[2],
                edges[3],
                loads[0],
                loads[1],
                off,
                order(edges[0], edges[1]),
                order(edges[2], edges[3]),
                state);
    }

    /** The same patches under other loads. */
    FloorCase with(double[] otherWorst, double[] otherNominal, String otherState) {
        return new FloorCase(units, people, x0, x1, y0, y1, otherWorst, otherNominal, off, edgesX, edgesY, otherState);
    }

    int patches() {
        return units.length;
    }

    /** Area of a patch (m²). */
    double area(int patch) {
        return (x1[patch] - x0[patch]) * 1e-6 * ((y1[patch] - y0[patch]) * 1e-6);
    }

    /** The part of a patch that lies in a rectangle, from 0 to 1. */
    double within(Rect area, int patch) {
        double x = Math.min(x1[patch], area.x1()) - (double) Math.max(x0[patch], area.x0());
        double y = Math.min(y1[patch], area.y1()) - (double) Math.max(y0[patch], area.y0());
        return x > 0 && y > 0 ? x / (x1[patch] - x0[patch]) * (y / (y1[patch] - y0[patch])) : 0;
    }

    private static int[] order(int[] low, int[] high) {
        long[] keys = new long[2 * low.length];
        for (int k = 0; k < low.length; k++) {
            keys[2 * k] = ((long) low[k] << 32) | 2 * k;
            keys[2 * k + 1] = ((long) high[k] << 32) | (2 * k + 1);
        }
        Arrays.sort(keys);
        int[] order = new int[keys.length];
        for (int i = 0; i < keys.length; i++) {
            order[i] = (int) keys[i];
        }
        return order;
    }
}

package org.shelterwright.layouts.ledger.floor;

import java.util.Arrays;
import java.util.List;
import org.shelterwright.catalog.space.Rect;
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
    static FloorCase of(List<PlacedUnit> units, Footing[] footings, UnitSums sums, String state) {
        int patches = 0;
        for (Footing footing : footings) {
            patches += footing.patches().size();
        }
        PlacedUnit[] owners = new PlacedUnit[patches];
        int[][] edges = new int[4][patches];
        double[] off = new double[patches];
        int at = 0;
        for (PlacedUnit unit : units) {
            Footing footing = footings[unit.index()];
            PressurePlane plane = footing.plane();
            for (int k = 0; plane != null && k < plane.patches(); k++) {
                Rect patch = footing.patches().get(k);
                owners[at] = unit;
                off[at] = plane.perMetreOff(k) * sums.off[unit.index()];
                edges[0][at] = patch.x0();
                edges[1][at] = patch.x1();
                edges[2][at] = patch.y0();
                edges[3][at] = patch.y1();
                at++;
            }
        }
        FloorCase empty = new FloorCase(
                owners,
                edges[0],
                edges[1],
                edges[2],
                edges[3],
                new double[0],
                new double[0],
                off,
                order(edges[0], edges[1]),
                order(edges[2], edges[3]),
                state);
        return empty.with(footings, sums, state);
    }

    /** The same patches under other loads. */
    FloorCase with(Footing[] footings, UnitSums sums, String otherState) {
        double[] most = new double[units.length];
        double[] grown = new double[units.length];
        int at = 0;
        for (int i = 0; i < footings.length; i++) {
            PressurePlane plane = footings[i].plane();
            if (plane != null) {
                plane.loads(sums.worst[i], sums.worstX[i], sums.worstY[i], most, at);
                plane.loads(sums.nominal[i], sums.nominalX[i], sums.nominalY[i], grown, at);
                at += plane.patches();
            }
        }
        return new FloorCase(units, x0, x1, y0, y1, most, grown, off, edgesX, edgesY, otherState);
    }

    int patches() {
        return units.length;
    }

    /** Area of a patch (m²). */
    double area(int patch) {
        return (x1[patch] - x0[patch]) * 1e-6 * ((y1[patch] - y0[patch]) * 1e-6);
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

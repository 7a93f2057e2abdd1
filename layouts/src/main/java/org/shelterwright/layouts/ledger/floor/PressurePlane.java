package org.shelterwright.layouts.ledger.floor;

import java.util.Arrays;
import java.util.List;
import org.shelterwright.catalog.space.Lengths;
import org.shelterwright.catalog.space.Rect;

/**
 * Spreads the mass of a rigid unit over its contact patches: the pressure under all of them is one plane {@code p = a + b x + c y}
 * (rigid unit on an even bed), in balance with the mass and its moments. A patch takes the pressure at its middle times its area,
 * which is exact for a plane. With S the second moments of all patches about their common centroid, patch k takes of 1 kg at a
 * distance (dx, dy) from it {@code A_k [1/A + (dx_k (S_yy dx − S_xy dy) + dy_k (S_xx dy − S_xy dx)) / (S_xx S_yy − S_xy²)]}.
 *
 * <p>A patch that would pull is off the floor: it is taken out, the most pulling one first, and the rest bears all. The last
 * one left bears all; bolts that hold the unit down are not counted on.
 */
final class PressurePlane {
    private final double[] areas;
    private final double[] x;
    private final double[] y;
    private final double[] ownXx;
    private final double[] ownYy;
    /** Load of a patch per kg: constant, per metre of x, per metre of y; all patches in contact. */
    private final double[][] perKg;

    PressurePlane(List<Rect> patches) {
        int count = patches.size();
        areas = new double[count];
        x = new double[count];
        y = new double[count];
        ownXx = new double[count];
        ownYy = new double[count];
        for (int k = 0; k < count; k++) {
            Rect patch = patches.get(k);
            double a = Lengths.metres(patch.x1() - patch.x0());
            double b = Lengths.metres(patch.y1() - patch.y0());
            areas[k] = a * b;
            x[k] = Lengths.metres(patch.x0()) + a / 2;
            y[k] = Lengths.metres(patch.y0()) + b / 2;
            ownXx[k] = areas[k] * a * a / 12;
            ownYy[k] = areas[k] * b * b / 12;
        }
        boolean[] all = new boolean[count];
        Arrays.fill(all, true);
        perKg = solve(all);
    }

    int patches() {
        return areas.length;
    }

    /** How much the load of a patch changes at most per kg whose place is off by 1 m on both axes. */
    double perMetreOff(int patch) {
        return Math.abs(perKg[patch][1]) + Math.abs(perKg[patch][2]);
    }

    /**
     * Writes what each patch bears (kg) into an array.
     *
     * @param massKg mass, with its moments about the axes of the body (kg·m)
     * @param from where in the array the first patch stands
     */
    void loads(double massKg, double momentX, double momentY, double[] into, int from) {
        if (!spread(perKg, massKg, momentX, momentY, into, from)) {
            boolean[] touching = new boolean[areas.length];
            Arrays.fill(touching, true);
            int left = areas.length;
            do {
                touching[lowest(touching, into, from)] = false;
                left--;
                if (left == 1) {
                    for (int k = 0; k < areas.length; k++) {
                        into[from + k] = touching[k] ? massKg : 0;
                    }
                    return;
                }
            } while (!spread(solve(touching), massKg, momentX, momentY, into, from));
        }
    }

    /** Writes the loads; gives whether none pulls. */
    private static boolean spread(
            double[][] perKg, double massKg, double momentX, double momentY, double[] into, int from) {
        boolean allPress = true;
        for (int k = 0; k < perKg.length; k++) {
            double load = perKg[k][0] * massKg + perKg[k][1] * momentX + perKg[k][2] * momentY;
            // what rounding leaves of nothing is nothing
            boolean nothing = Math.abs(load) < 1e-9 * massKg;
            into[from + k] = nothing ? 0 : load;
            allPress &= nothing || load > 0 || perKg.length == 1;
        }
        return allPress;
    }

    private static int lowest(boolean[] touching, double[] loads, int from) {
        int lowest = -1;
        for (int k = 0; k < touching.length; k++) {
            if (touching[k] && (lowest < 0 || loads[from + k] < loads[from + lowest])) {
                lowest = k;
            }
        }
        return lowest;
    }

    private double[][] solve(boolean[] touching) {
        double area = 0;
        double cx = 0;
        double cy = 0;
        for (int k = 0; k < areas.length; k++) {
            if (touching[k]) {
                area += areas[k];
                cx += areas[k] * x[k];
                cy += areas[k] * y[k];
            }
        }
        cx /= area;
        cy /= area;
        double xx = 0;
        double yy = 0;
        double xy = 0;
        for (int k = 0; k < areas.length; k++) {
            if (touching[k]) {
                xx += ownXx[k] + areas[k] * (x[k] - cx) * (x[k] - cx);
                yy += ownYy[k] + areas[k] * (y[k] - cy) * (y[k] - cy);
                xy += areas[k] * (x[k] - cx) * (y[k] - cy);
            }
        }
        double det = xx * yy - xy * xy;
        double[][] solved = new double[areas.length][3];
        for (int k = 0; k < areas.length; k++) {
            if (touching[k]) {
                double perX = areas[k] * ((x[k] - cx) * yy - (y[k] - cy) * xy) / det;
                double perY = areas[k] * ((y[k] - cy) * xx - (x[k] - cx) * xy) / det;
                solved[k][0] = areas[k] / area - perX * cx - perY * cy;
                solved[k][1] = perX;
                solved[k][2] = perY;
            }
        }
        return solved;
    }
}

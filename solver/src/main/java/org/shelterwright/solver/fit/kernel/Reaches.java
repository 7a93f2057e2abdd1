package org.shelterwright.solver.fit.kernel;

import org.shelterwright.catalog.item.Situation;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.Option;

/**
 * The least cuboid around everything that each slot fills or keeps free, as separate arrays: the quick reject. Over a work
 * place it is at least as high as the headroom that must stay free there.
 */
final class Reaches {
    final int[] x0;
    final int[] y0;
    final int[] z0;
    final int[] x1;
    final int[] y1;
    final int[] z1;
    private final int seatHeadroom;

    Reaches(FitProblem problem) {
        int n = problem.size();
        x0 = new int[n];
        y0 = new int[n];
        z0 = new int[n];
        x1 = new int[n];
        y1 = new int[n];
        z1 = new int[n];
        seatHeadroom = problem.access().seatHeadroom();
    }

    void set(int slot, Option option, int x, int y, int z) {
        int[] station = option.shape(Situation.ON_STATION).reach();
        int[] road = option.shape(Situation.ON_THE_ROAD).reach();
        x0[slot] = x + Math.min(station[0], road[0]);
        y0[slot] = y + Math.min(station[1], road[1]);
        z0[slot] = z + Math.min(station[2], road[2]);
        x1[slot] = x + Math.max(station[3], road[3]);
        y1[slot] = y + Math.max(station[4], road[4]);
        z1[slot] = z + Math.max(station[5], road[5]);
        if (option.workPlace()) {
            z1[slot] = Math.max(z1[slot], seatHeadroom);
        }
    }

    /** The placed slots whose reach overlaps or touches that of the given one. */
    int touching(int slot, boolean[] placed, int[] found) {
        int count = 0;
        for (int j = 0; j < x0.length; j++) {
            if (j != slot
                    && placed[j]
                    && x0[j] <= x1[slot]
                    && x0[slot] <= x1[j]
                    && y0[j] <= y1[slot]
                    && y0[slot] <= y1[j]
                    && z0[j] <= z1[slot]
                    && z0[slot] <= z1[j]) {
                found[count++] = j;
            }
        }
        return count;
    }
}

package org.shelterwright.solver.load.packing;

import java.util.ArrayList;
import java.util.List;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.solver.load.model.CargoKind;
import org.shelterwright.solver.load.model.LoadProblem;

/**
 * How much of a length the edges of what is left can fill: for each length the greatest sum of edges not above it (a
 * knapsack with each edge as often as its pieces are left, as bit sets). Long rooms are taken in steps, edges rounded up.
 */
final class Sums {
    private static final int MOST_STEPS = 4_096;

    private final int step;
    private final int[][] edges;
    private final long[] bits;
    private final long[] shifted;
    private final int[] greatest;

    /**
     * Prepares the sums in one direction.
     *
     * @param length of the room in that direction
     * @param upright whether the direction is up
     */
    Sums(LoadProblem problem, int length, boolean upright) {
        step = 1 + (length - 1) / MOST_STEPS;
        int steps = length / step;
        bits = new long[(steps >> 6) + 1];
        shifted = new long[bits.length];
        greatest = new int[steps + 1];
        edges = new int[problem.kinds().size()][];
        for (int k = 0; k < edges.length; k++) {
            edges[k] = edges(problem.kinds().get(k), upright);
        }
    }

    private int[] edges(CargoKind kind, boolean upright) {
        List<Integer> found = new ArrayList<>();
        for (Size stance : kind.upright().stances(kind.size())) {
            int edge = upright ? stance.z() : stance.x();
            int steps = (edge + step - 1) / step;
            if (!found.contains(steps)) {
                found.add(steps);
            }
        }
        return found.stream().mapToInt(Integer::intValue).toArray();
    }

    /** Works the sums out for what is left now. */
    void refresh(Packing packing) {
        java.util.Arrays.fill(bits, 0);
        bits[0] = 1;
        int steps = greatest.length - 1;
        for (int k = 0; k < edges.length; k++) {
            int left = packing.left(k);
            if (left > 0) {
                for (int edge : edges[k]) {
                    int times = Math.min(left, steps / edge);
                    for (int part = 1; times > 0; part *= 2) {
                        int taken = Math.min(part, times);
                        shiftOr(edge * taken);
                        times -= taken;
                    }
                }
            }
        }
        int last = 0;
        for (int t = 0; t <= steps; t++) {
            if ((bits[t >> 6] >>> t & 1) != 0) {
                last = t;
            }
            greatest[t] = last * step;
        }
    }

    private void shiftOr(int by) {
        int words = by >> 6;
        int rest = by & 63;
        int length = bits.length;
        if (rest == 0) {
            for (int w = length - 1; w >= words; w--) {
                bits[w] |= bits[w - words];
            }
            return;
        }
        System.arraycopy(bits, 0, shifted, 0, length);
        for (int w = length - 1; w > words; w--) {
            bits[w] |= shifted[w - words] << rest | shifted[w - words - 1] >>> 64 - rest;
        }
        if (words < length) {
            bits[words] |= shifted[0] << rest;
        }
    }

    /** The greatest sum that is at most {@code length}. */
    int upTo(int length) {
        return greatest[length / step];
    }
}

package org.shelterwright.solver.load.packing;

import java.util.ArrayList;
import java.util.Arrays;
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

    private final int shift;
    private final int[][] edges;
    private final long[] bits;
    private final int[] pieces;
    private final int[] greatest;

    /**
     * Prepares the sums in one direction.
     *
     * @param length of the room in that direction
     * @param upright whether the direction is up
     */
    Sums(LoadProblem problem, int length, boolean upright) {
        int least = 0;
        while (length >> least > MOST_STEPS) {
            least++;
        }
        shift = least;
        int steps = length >> shift;
        bits = new long[(steps >> 6) + 1];
        pieces = new int[steps + 1];
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
            int steps = (edge + (1 << shift) - 1) >> shift;
            if (steps < greatest.length && !found.contains(steps)) {
                found.add(steps);
            }
        }
        return found.stream().mapToInt(Integer::intValue).toArray();
    }

    /** Works the sums out for what is left now. */
    void refresh(Packing packing) {
        Arrays.fill(pieces, 0);
        for (int k = 0; k < edges.length; k++) {
            int left = packing.left(k);
            if (left > 0) {
                for (int edge : edges[k]) {
                    pieces[edge] += left;
                }
            }
        }
        Arrays.fill(bits, 0);
        bits[0] = 1;
        int steps = greatest.length - 1;
        int open = bits.length;
        for (int edge = 1; edge <= steps; edge++) {
            int times = Math.min(pieces[edge], steps / edge);
            for (int part = 1; times > 0; part *= 2) {
                int taken = Math.min(part, times);
                add(edge * taken, open);
                times -= taken;
            }
            while (open > 0 && bits[open - 1] == -1L) {
                open--;
            }
        }
        fill(steps);
    }

    private void fill(int steps) {
        int last = 0;
        for (int w = 0; w < bits.length; w++) {
            int from = w << 6;
            int to = Math.min(steps, from + 63);
            long word = bits[w];
            if (word == -1L) {
                for (int t = from; t <= to; t++) {
                    greatest[t] = t << shift;
                }
                last = to;
            } else {
                for (int t = from; t <= to; t++) {
                    last = (word >>> t & 1) != 0 ? t : last;
                    greatest[t] = last << shift;
                }
            }
        }
    }

    /** Adds to every sum a length; words from {@code open} on hold all sums already. */
    private void add(int by, int open) {
        int words = by >> 6;
        int rest = by & 63;
        if (rest == 0) {
            for (int w = open - 1; w >= words; w--) {
                bits[w] |= bits[w - words];
            }
            return;
        }
        for (int w = open - 1; w > words; w--) {
            bits[w] |= (bits[w - words] << rest) | (bits[w - words - 1] >>> (64 - rest));
        }
        if (words < open) {
            bits[words] |= bits[0] << rest;
        }
    }

    /** The greatest sum that is at most {@code length}. */
    int upTo(int length) {
        return greatest[length >> shift];
    }
}

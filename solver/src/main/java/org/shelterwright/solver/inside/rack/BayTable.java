package org.shelterwright.solver.inside.rack;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The least cost of every choice of pieces in one bay, with the arrangement: dynamic programming from the lowest unit up, the next
 * unit being left open or taking the lowest unit of one more piece. Exact. Cost: units times choices times kinds.
 */
final class BayTable {
    private static final byte OPEN = -1;

    private final Choices choices;
    private final int units;
    private final int[] kindUnits;
    private final long[][] least;
    private final byte[][] last;

    /**
     * @param samples one piece of each kind
     * @param bay number of the bay
     */
    BayTable(RackProblem problem, Choices choices, List<RackPiece> samples, int bay) {
        this.choices = choices;
        RackBayRoom room = problem.bays().get(bay);
        units = room.units();
        kindUnits = samples.stream().mapToInt(RackPiece::units).toArray();
        least = new long[units + 1][choices.size()];
        last = new byte[units + 1][choices.size()];
        for (long[] row : least) {
            Arrays.fill(row, RackCost.NEVER);
        }
        least[0][0] = 0;
        for (int u = 0; u < units; u++) {
            for (int choice = 0; choice < choices.size(); choice++) {
                long so = least[u][choice];
                if (so < RackCost.NEVER) {
                    offer(u + 1, choice, so + (room.blocked()[u] ? 0 : room.openCost()), OPEN);
                    for (int k = 0; k < kindUnits.length; k++) {
                        if (choices.held(choice, k) < choices.counts()[k] && free(room, u, kindUnits[k])) {
                            long own = problem.cost(samples.get(k), bay, u + 1);
                            if (own < RackCost.NEVER) {
                                offer(u + kindUnits[k], choice + choices.step()[k], so + own, (byte) k);
                            }
                        }
                    }
                }
            }
        }
    }

    private void offer(int u, int choice, long cost, byte by) {
        if (cost < least[u][choice]) {
            least[u][choice] = cost;
            last[u][choice] = by;
        }
    }

    private static boolean free(RackBayRoom room, int from, int count) {
        if (from + count > room.units()) {
            return false;
        }
        for (int u = from; u < from + count; u++) {
            if (room.blocked()[u]) {
                return false;
            }
        }
        return true;
    }

    /** The least cost of a choice in this bay; {@link RackCost#NEVER} if it does not fit. */
    long least(int choice) {
        return least[units][choice];
    }

    /** The lowest unit of each piece of a choice, by kind, from above. */
    List<int[]> arrangement(int choice) {
        List<int[]> found = new ArrayList<>();
        int u = units;
        int left = choice;
        while (u > 0) {
            byte by = last[u][left];
            if (by == OPEN) {
                u--;
            } else {
                u -= kindUnits[by];
                left -= choices.step()[by];
                found.add(new int[] {by, u + 1});
            }
        }
        return found;
    }
}

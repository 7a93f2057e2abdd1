package org.shelterwright.solver.inside.rack;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.shelterwright.solver.fit.kernel.Dice;
import org.shelterwright.solver.inside.rack.RackProblem.Seat;

/** Small racks of random pieces over fixed seeds, and what trying everything finds. */
public final class RandomRacks {
    private RandomRacks() {}

    /** One or two bays with some units blocked, three to nine pieces of random cost at each place. */
    static RackProblem of(int seed) {
        Dice dice = Dice.of(seed, 0);
        int count = seed < 60 ? 3 + dice.below(3) : seed < 90 ? 6 : 7 + seed % 3;
        int bays = count <= 5 ? 1 + dice.below(2) : 1;
        return of(dice, count, bays, count >= 7 ? 0 : dice.below(2), seed % 4 == 0);
    }

    /** Full racks that only just can be solved exactly: 12 to 16 pieces in one bay, or 9 to 11 in two or three. */
    static RackProblem large(int seed) {
        Dice dice = Dice.of(seed, 5);
        int bays = seed % 2 == 0 ? 1 : 2 + seed / 2 % 2;
        int count = bays == 1 ? 12 + dice.below(5) : 9 + dice.below(3);
        return of(dice, count, bays, dice.below(3), seed % 4 == 0);
    }

    private static RackProblem of(Dice dice, int count, int bays, int slack, boolean twins) {
        List<RackPiece> pieces = new ArrayList<>();
        int total = 0;
        int[] heights = new int[count];
        for (int i = 0; i < count; i++) {
            heights[i] = 1 + dice.below(3);
            total += heights[i];
        }
        List<RackBayRoom> rooms = new ArrayList<>();
        int left = total + slack;
        for (int b = 0; b < bays; b++) {
            int units = b == bays - 1 ? Math.max(1, left) : Math.max(1, left / (bays - b));
            left -= units;
            rooms.add(new RackBayRoom(
                    "unit",
                    "bay " + b,
                    units,
                    new boolean[units],
                    30_000 + dice.below(60_000),
                    dice.below(2) * RackCost.OPEN));
        }
        for (int i = 0; i < count; i++) {
            if (twins && i == count - 1 && heights[i] == heights[0]) {
                RackPiece first = pieces.get(0);
                pieces.add(new RackPiece("p" + i, first.kind(), first.units(), first.grams(), first.costs()));
                continue;
            }
            long grams = 1000 + dice.below(30_000);
            long[][] costs = new long[bays][];
            for (int b = 0; b < bays; b++) {
                costs[b] = new long[Math.max(0, rooms.get(b).units() - heights[i] + 1)];
                for (int u = 0; u < costs[b].length; u++) {
                    costs[b][u] =
                            RackCost.moment(grams, u * 44_450 + 22_000) + (dice.below(5) == 0 ? RackCost.MEDIUM : 0);
                }
            }
            pieces.add(new RackPiece("p" + i, kinds(pieces), heights[i], grams, costs));
        }
        return new RackProblem(pieces, rooms);
    }

    /** In how many of so many cases the exact arrangement costs what trying everything finds. */
    public static int exact(int cases) {
        int same = 0;
        for (int seed = 0; seed < cases; seed++) {
            RackProblem problem = of(seed);
            same += exact(problem) == least(problem) ? 1 : 0;
        }
        return same;
    }

    /**
     * The search against the exact arrangement.
     *
     * @param same in how many cases it costs as little
     * @param leavesOut in how many it leaves out a piece that the exact arrangement seats
     * @param excess in the others, the mean of what it costs more, as a share of the least
     */
    public record Searched(int same, int leavesOut, double excess) {}

    public static Searched searched(int cases, long moves, boolean large) {
        int same = 0;
        int leavesOut = 0;
        double excess = 0;
        for (int seed = 0; seed < cases; seed++) {
            RackProblem problem = large ? large(seed) : of(seed);
            List<Seat> best = ExactRacks.of(problem).orElseThrow().seats();
            List<Seat> found = new RackSearch(problem).seats(seed, moves);
            long least = problem.cost(best);
            if (problem.cost(found) == least) {
                same++;
            } else if (seated(found) < seated(best)) {
                leavesOut++;
            } else {
                excess += (problem.cost(found) - least) / (double) least;
            }
        }
        return new Searched(same, leavesOut, excess / Math.max(1, cases - same - leavesOut));
    }

    private static long seated(List<Seat> seats) {
        return seats.stream().filter(seat -> seat.bay() >= 0).count();
    }

    private static long exact(RackProblem problem) {
        return problem.cost(ExactRacks.of(problem).orElseThrow().seats());
    }

    /** The least cost that trying everything finds. */
    static long least(RackProblem problem) {
        boolean[][] taken = new boolean[problem.bays().size()][];
        for (int b = 0; b < taken.length; b++) {
            taken[b] = new boolean[problem.bays().get(b).units()];
        }
        return bruteForce(problem, 0, new Seat[problem.pieces().size()], taken);
    }

    private static int kinds(List<RackPiece> pieces) {
        return pieces.stream().mapToInt(RackPiece::kind).max().orElse(-1) + 1;
    }

    /** Every piece at every place, or nowhere; cut off only where two would share a unit. */
    private static long bruteForce(RackProblem problem, int at, Seat[] seats, boolean[][] taken) {
        if (at == seats.length) {
            return problem.cost(List.of(seats));
        }
        RackPiece piece = problem.pieces().get(at);
        seats[at] = Seat.NONE;
        long least = seats.length > 5 ? Long.MAX_VALUE : bruteForce(problem, at + 1, seats, taken);
        for (int b = 0; b < taken.length; b++) {
            for (int u = 0; u + piece.units() <= taken[b].length; u++) {
                boolean free = true;
                for (int i = u; i < u + piece.units(); i++) {
                    free &= !taken[b][i];
                }
                if (free) {
                    Arrays.fill(taken[b], u, u + piece.units(), true);
                    seats[at] = new Seat(b, u + 1);
                    least = Math.min(least, bruteForce(problem, at + 1, seats, taken));
                    Arrays.fill(taken[b], u, u + piece.units(), false);
                }
            }
        }
        return least;
    }
}

package org.shelterwright.solver.inside.rack;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.solver.fit.kernel.Dice;
import org.shelterwright.solver.inside.rack.RackProblem.Seat;
import static org.assertj.core.api.Assertions.assertThat;

/** The exact arrangement against trying everything, and the search against the exact arrangement, over fixed seeds. */
class ExactRacksTest {
    /** One or two bays with some units blocked, three to nine pieces of random cost at each place. */
    static RackProblem random(int seed) {
        Dice dice = Dice.of(seed, 0);
        int count = seed < 60 ? 3 + dice.below(3) : seed < 90 ? 6 : 7 + seed % 3;
        int bays = count <= 5 ? 1 + dice.below(2) : 1;
        List<RackPiece> pieces = new ArrayList<>();
        int total = 0;
        int[] heights = new int[count];
        for (int i = 0; i < count; i++) {
            heights[i] = 1 + dice.below(3);
            total += heights[i];
        }
        int slack = count >= 7 ? 0 : dice.below(2);
        List<RackBayRoom> rooms = new ArrayList<>();
        int left = total + slack;
        for (int b = 0; b < bays; b++) {
            int units = b == bays - 1 ? Math.max(1, left) : Math.max(1, left / 2);
            left -= units;
            rooms.add(new RackBayRoom("unit", "bay " + b, units, new boolean[units], 30_000 + dice.below(60_000), dice.below(2) * RackCost.OPEN));
        }
        boolean twins = seed % 4 == 0;
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
                    costs[b][u] = RackCost.moment(grams, u * 44_450 + 22_000) + (dice.below(5) == 0 ? RackCost.MEDIUM : 0);
                }
            }
            pieces.add(new RackPiece("p" + i, kinds(pieces), heights[i], grams, costs));
        }
        return new RackProblem(pieces, rooms);
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

    @Test
    void theExactArrangementCostsWhatTryingEverythingFinds() {
        for (int seed = 0; seed < 100; seed++) {
            RackProblem problem = random(seed);
            boolean[][] taken = new boolean[problem.bays().size()][];
            for (int b = 0; b < taken.length; b++) {
                taken[b] = new boolean[problem.bays().get(b).units()];
            }

            List<Seat> seats = ExactRacks.of(problem).orElseThrow().seats();

            assertThat(problem.cost(seats))
                    .as("seed %d, %d pieces", seed, problem.pieces().size())
                    .isEqualTo(bruteForce(problem, 0, new Seat[problem.pieces().size()], taken));
        }
    }

    @Test
    void theSearchIsRepeatableAndNearTheExactArrangement() {
        int same = 0;
        int cases = 12;
        for (int seed = 0; seed < cases; seed++) {
            RackProblem problem = random(seed);
            long exact = problem.cost(ExactRacks.of(problem).orElseThrow().seats());

            List<Seat> found = new RackSearch(problem).seats(seed, 20_000);

            assertThat(problem.cost(found)).as("seed %d", seed).isBetween(exact, RackCost.NEVER - 1);
            assertThat(new RackSearch(problem).seats(seed, 20_000)).as("seed %d", seed).isEqualTo(found);
            same += problem.cost(found) == exact ? 1 : 0;
        }
        assertThat(same).as("cases in which the search is exact").isGreaterThanOrEqualTo(cases * 2 / 3);
    }

    @Test
    void tooManyChoicesAreLeftToTheSearch() {
        List<RackPiece> pieces = new ArrayList<>();
        for (int i = 0; i < 30; i++) {
            pieces.add(new RackPiece("p" + i, i, 1, 1000, new long[][] {new long[40]}));
        }
        RackProblem problem =
                new RackProblem(pieces, List.of(new RackBayRoom("unit", "bay", 40, new boolean[40], 1_000_000, 0)));

        assertThat(ExactRacks.of(problem)).isEmpty();
        assertThat(problem.cost(new RackSearch(problem).seats(1, 5_000))).isLessThan(RackCost.LEFT_OUT);
    }

    @Test
    void blockedUnitsStayFree() {
        boolean[] blocked = new boolean[6];
        blocked[1] = true;
        RackPiece two = new RackPiece("two", 0, 2, 1000, new long[][] {{0, 1, 2, 3, 4}});
        RackProblem problem =
                new RackProblem(List.of(two), List.of(new RackBayRoom("unit", "bay", 6, blocked, 5_000, 0)));

        assertThat(ExactRacks.of(problem).orElseThrow().seats()).containsExactly(new Seat(0, 3));
    }
}

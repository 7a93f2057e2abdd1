package org.shelterwright.solver.inside.rack;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.solver.inside.rack.RackProblem.Seat;

/** The exact arrangement against trying everything, and the search against the exact arrangement, over fixed seeds. */
class ExactRacksTest {
    @Test
    void theExactArrangementCostsWhatTryingEverythingFinds() {
        for (int seed = 0; seed < 100; seed++) {
            RackProblem problem = RandomRacks.of(seed);
            List<Seat> seats = ExactRacks.of(problem).orElseThrow().seats();

            assertThat(problem.cost(seats))
                    .as("seed %d, %d pieces", seed, problem.pieces().size())
                    .isEqualTo(RandomRacks.least(problem));
        }
    }

    @Test
    void theSearchIsRepeatableAndNearTheExactArrangement() {
        int same = 0;
        int cases = 12;
        for (int seed = 0; seed < cases; seed++) {
            RackProblem problem = RandomRacks.of(seed);
            long exact = problem.cost(ExactRacks.of(problem).orElseThrow().seats());

            List<Seat> found = new RackSearch(problem).seats(seed, 20_000);

            assertThat(problem.cost(found)).as("seed %d", seed).isBetween(exact, RackCost.NEVER - 1);
            assertThat(new RackSearch(problem).seats(seed, 20_000))
                    .as("seed %d", seed)
                    .isEqualTo(found);
            same += problem.cost(found) == exact ? 1 : 0;
        }
        assertThat(same).as("cases in which the search is exact").isGreaterThanOrEqualTo(cases * 2 / 3);
    }

    @Test
    void whereThereIsMuchToChooseTheSearchIsAsCheapAsTheExactWayAndLeavesNothingOut() {
        RandomRacks.Searched found = RandomRacks.searched(6, 20_000, true);

        assertThat(found.leavesOut()).isZero();
        assertThat(found.same()).as("of 6").isGreaterThanOrEqualTo(5);
    }

    @Test
    void seatingByHeightsLeavesOutNothingThatFits() {
        for (int seed = 0; seed < 40; seed++) {
            RackProblem problem = RandomRacks.large(seed);
            long exact = ExactRacks.of(problem).orElseThrow().seats().stream()
                    .filter(seat -> seat.bay() >= 0)
                    .count();

            List<Seat> seats = HeightsFirst.seats(problem).orElseThrow();

            assertThat(problem.cost(seats)).as("seed %d", seed).isLessThan(RackCost.NEVER);
            assertThat(seats.stream().filter(seat -> seat.bay() >= 0).count())
                    .as("seed %d", seed)
                    .isGreaterThanOrEqualTo(exact);
        }
    }

    @Test
    void seatingAFewAnewNeverCostsMore() {
        RackProblem problem = RandomRacks.large(3);
        List<Seat> start = new RackSearch(problem).greedy();
        long cost = problem.cost(start);
        for (int rounds : new int[] {1, 5, 25}) {
            List<Seat> better = new Resettling(problem, 1).better(start, rounds);

            assertThat(problem.cost(better)).isLessThanOrEqualTo(cost);
            cost = problem.cost(better);
        }
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

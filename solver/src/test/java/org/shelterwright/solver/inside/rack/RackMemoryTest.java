package org.shelterwright.solver.inside.rack;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.solver.inside.rack.RackProblem.Seat;

class RackMemoryTest {
    @Test
    void aProblemThatIsTheSameIsNotSearchedAgainAndAnyOtherIs() {
        RackMemory memory = new RackMemory();
        int[] searches = {0};
        for (int round = 0; round < 2; round++) {
            for (int seed = 0; seed < 10; seed++) {
                RackProblem problem = RandomRacks.of(seed);
                List<Seat> expected = ExactRacks.of(problem).orElseThrow().seats();

                List<Seat> found = memory.seats(problem, 1, () -> {
                    searches[0]++;
                    return ExactRacks.of(problem).orElseThrow().seats();
                });

                assertThat(found).as("seed %d, round %d", seed, round).isEqualTo(expected);
            }
        }
        assertThat(searches[0]).isEqualTo(10);
    }

    @Test
    void anotherSeedIsSearchedAnew() {
        RackMemory memory = new RackMemory();
        RackProblem problem = RandomRacks.of(1);
        List<Seat> other = List.of(Seat.NONE);
        memory.seats(problem, 1, () -> List.of());

        assertThat(memory.seats(problem, 2, () -> other)).isEqualTo(other);
    }

    @Test
    void theOldestIsForgottenAndThenSearchedAgain() {
        RackMemory memory = new RackMemory();
        for (int seed = 0; seed < 40; seed++) {
            RackProblem problem = RandomRacks.of(seed);
            memory.seats(problem, 1, () -> ExactRacks.of(problem).orElseThrow().seats());
        }
        List<Seat> other = List.of(Seat.NONE);

        assertThat(memory.seats(RandomRacks.of(0), 1, () -> other)).isEqualTo(other);
    }
}

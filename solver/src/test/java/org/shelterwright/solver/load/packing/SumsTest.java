package org.shelterwright.solver.load.packing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.catalog.space.Size;
import org.shelterwright.solver.load.Cargoes;
import org.shelterwright.solver.load.block.BlockTable;
import org.shelterwright.solver.load.block.Blocks;
import org.shelterwright.solver.load.model.CargoKind;
import org.shelterwright.solver.load.model.LoadProblem;
import org.shelterwright.solver.load.model.Support;
import org.shelterwright.solver.load.model.Upright;

/** The sums by bit sets against a table of what can be reached, filled one piece at a time. */
class SumsTest {
    private static Packing empty(LoadProblem problem) {
        return new Packing(new BlockTable(problem, Blocks.of(problem, 1, 1, (a, b) -> true, () -> false), 0));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void areThoseOfAPlainKnapsack(long seed) {
        LoadProblem problem = Cargoes.of(seed, 1 + (int) seed, Support.FULL);
        for (boolean upright : new boolean[] {false, true}) {
            int length = upright ? problem.room().z() : problem.room().x();
            Sums sums = new Sums(problem, length, upright);
            sums.refresh(empty(problem));
            boolean[] reached = reached(problem, length, upright);
            int last = 0;
            for (int t = 0; t <= length; t++) {
                last = reached[t] ? t : last;
                assertThat(sums.upTo(t)).as("seed %d, length %d", seed, t).isEqualTo(last);
            }
        }
    }

    private static boolean[] reached(LoadProblem problem, int length, boolean upright) {
        boolean[] reached = new boolean[length + 1];
        reached[0] = true;
        for (CargoKind kind : problem.kinds()) {
            List<Integer> edges = kind.upright().stances(kind.size()).stream()
                    .map(s -> upright ? s.z() : s.x())
                    .distinct()
                    .toList();
            for (int edge : edges) {
                for (int piece = 0; piece < kind.count(); piece++) {
                    for (int t = length; t >= edge; t--) {
                        reached[t] |= reached[t - edge];
                    }
                }
            }
        }
        return reached;
    }

    @Test
    void longRoomsAreTakenInStepsOnTheSafeSide() {
        LoadProblem problem = LoadProblem.of(
                new Size(12_000_000, 2_400_000, 2_400_000),
                List.of(CargoKind.of("a", new Size(1_000_000, 700_000, 500_000), Upright.AS_IS, 9)),
                Support.FULL);
        Sums sums = new Sums(problem, 12_000_000, false);

        sums.refresh(empty(problem));

        assertThat(sums.upTo(2_500_000)).isBetween(2_390_000, 2_410_000);
        assertThat(sums.upTo(600_000)).isZero();
    }
}

package org.shelterwright.solver.load.block;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.solver.load.Cargoes;
import org.shelterwright.solver.load.audit.LoadAudit;
import org.shelterwright.solver.load.model.Load;
import org.shelterwright.solver.load.model.LoadProblem;
import org.shelterwright.solver.load.model.Stowed;
import org.shelterwright.solver.load.model.Support;

class BlocksTest {
    @ParameterizedTest
    @CsvSource({"1, 3, FULL", "2, 10, FULL", "3, 40, FULL", "4, 6, NONE", "5, 40, NONE"})
    void eachHoldsAsALoadOfItsOwn(long seed, int kinds, Support support) {
        LoadProblem problem = Cargoes.of(seed, kinds, support);

        List<Block> blocks = Blocks.of(problem, 0.98, 1_500, (a, b) -> true, () -> false);

        assertThat(blocks).hasSizeGreaterThan(200);
        for (Block block : blocks) {
            Load load = load(block);
            assertThat(LoadAudit.of(problem, load))
                    .as("seed %d, %s", seed, block)
                    .isEmpty();
            assertThat(load.volume()).isEqualTo(block.volume());
            assertThat(block.fill()).isBetween(0.98, 1.0);
        }
    }

    @ParameterizedTest
    @CsvSource({"1, 3", "2, 10", "3, 40"})
    void topsLieWhollyOnPiecesThatEndThere(long seed, int kinds) {
        LoadProblem problem = Cargoes.of(seed, kinds, Support.FULL);

        for (Block block : Blocks.of(problem, 0.97, 1_500, (a, b) -> true, () -> false)) {
            int[] tops = block.tops();
            for (int i = 0; i < tops.length; i += Block.TOP) {
                long borne = 0;
                for (Stowed one : load(block).stowed()) {
                    Box box = one.box();
                    if (box.z1() == tops[i + 4]) {
                        long dx = Math.min(box.x1(), tops[i + 2]) - Math.max(box.x0(), tops[i]);
                        long dy = Math.min(box.y1(), tops[i + 3]) - Math.max(box.y0(), tops[i + 1]);
                        borne += Math.max(0, dx) * Math.max(0, dy);
                    }
                }
                assertThat(borne)
                        .as("seed %d", seed)
                        .isEqualTo((long) (tops[i + 2] - tops[i]) * (tops[i + 3] - tops[i + 1]));
            }
        }
    }

    @Test
    void nothingStandsOnWhatBearsNothing() {
        LoadProblem plain = Cargoes.of(6, 4, Support.FULL);
        LoadProblem problem = plain.withKinds(
                plain.kinds().stream().map(kind -> kind.withTopLoad(0)).toList());

        for (Block block : Blocks.of(problem, 0.98, 1_000, (a, b) -> true, () -> false)) {
            assertThat(block.tops()).isEmpty();
            assertThat(load(block).stowed()).allMatch(one -> one.box().z0() == 0);
        }
    }

    @Test
    void makingEndsWhenItIsLate() {
        LoadProblem problem = Cargoes.of(3, 60, Support.FULL);

        List<Block> blocks = Blocks.of(problem, 0.98, 100_000, (a, b) -> true, () -> true);

        assertThat(blocks).hasSizeLessThan(3_000);
    }

    private static Load load(Block block) {
        List<Stowed> stowed = new ArrayList<>();
        int[] p = block.parts();
        for (int i = 0; i < p.length; i += Block.PART) {
            stowed.add(new Stowed(
                    p[i],
                    new Box(
                            p[i + 1],
                            p[i + 2],
                            p[i + 3],
                            p[i + 1] + p[i + 4],
                            p[i + 2] + p[i + 5],
                            p[i + 3] + p[i + 6])));
        }
        return new Load(stowed);
    }
}

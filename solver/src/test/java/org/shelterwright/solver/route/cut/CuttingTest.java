package org.shelterwright.solver.route.cut;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.shelterwright.solver.route.cut.Cutting.Piece;

class CuttingTest {
    private static List<Piece> pieces(long... lengths) {
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < lengths.length; i++) {
            pieces.add(new Piece("w" + (i + 1), lengths[i]));
        }
        return pieces;
    }

    @Test
    void firstFitWouldNeedThreeDrumsWhereTwoDo() {
        // First fit decreasing puts 44 and 24 together and then needs a third drum.
        Cutting cutting = Cutting.of(pieces(44, 24, 24, 22, 21, 17, 8, 8, 6, 6), 90);

        assertThat(cutting.drums()).hasSize(cutting.bound()).hasSize(2);
    }

    @Test
    void threePiecesOfMoreThanHalfADrumNeedThree() {
        assertThat(Cutting.of(pieces(51, 51, 51), 100).bound()).isEqualTo(3);
    }

    @Test
    void aPieceLongerThanADrumIsToldApart() {
        Cutting cutting = Cutting.of(pieces(120, 30), 100);

        assertThat(cutting.tooLong()).extracting(Piece::wire).containsExactly("w1");
        assertThat(cutting.drums()).hasSize(1);
    }

    @Test
    void neverCutsMoreThanADrumHoldsAndNeverGoesBelowTheBound() {
        for (long seed = 1; seed <= 300; seed++) {
            Random random = new Random(seed);
            long[] lengths = random.longs(1 + random.nextInt(12), 1, 60).toArray();

            Cutting cutting = Cutting.of(pieces(lengths), 100);

            assertThat(cutting.drums()).as("seed %d", seed).allSatisfy(drum -> assertThat(Cutting.sum(drum))
                    .isLessThanOrEqualTo(100));
            assertThat(cutting.drums().stream().mapToInt(List::size).sum()).isEqualTo(lengths.length);
            assertThat(cutting.bound()).isLessThanOrEqualTo(cutting.drums().size());
            assertThat(cutting.drums().size()).as("seed %d", seed).isEqualTo(least(lengths, 0, new long[lengths.length], 0));
        }
    }

    /** Fewest drums, by trying all. */
    private static int least(long[] lengths, int next, long[] bins, int used) {
        if (next == lengths.length) {
            return used;
        }
        int best = Integer.MAX_VALUE;
        for (int b = 0; b <= used && b < bins.length; b++) {
            if (bins[b] + lengths[next] <= 100 && (b < used || best == Integer.MAX_VALUE || used + 1 < best)) {
                bins[b] += lengths[next];
                best = Math.min(best, least(lengths, next + 1, bins, Math.max(used, b + 1)));
                bins[b] -= lengths[next];
            }
        }
        return best;
    }
}

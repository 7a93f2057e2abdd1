package org.shelterwright.layouts.ledger;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.trial.RandomScenes;

/** After any move the live ledger equals the full one. */
class LiveLedgerTest {
    private static final int LAYOUTS = 20;
    private static final int MOVES = 100_000;
    private static final int MOVES_WITH_ALL_LIMITS = 2_000;

    static LongStream seeds() {
        return LongStream.range(0, LAYOUTS);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void localLimitsAgreeWithAFullRunAfterEveryMove(long seed) {
        // given the limits of which only a part is run again after a move
        List<Limit> local = Checker.standard().book().limits().stream()
                .filter(limit -> limit instanceof Limit.OfUnit || limit instanceof Limit.OfPair)
                .toList();
        // when, then
        Set<String> broken = agree(new LimitBook(local), seed, 4 + (int) (seed % 8), MOVES / LAYOUTS);
        assertThat(broken).as("limits that broke on the way").hasSizeGreaterThan(8);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void allLimitsAgreeWithAFullRunAfterEveryMove(long seed) {
        agree(Checker.standard().book(), seed, 20, MOVES_WITH_ALL_LIMITS / LAYOUTS);
    }

    private static Set<String> agree(LimitBook book, long seed, int units, int moves) {
        RandomScenes scenes = new RandomScenes(seed);
        Scene scene = scenes.scene(units);
        LedgerBuilder live = new LedgerBuilder(book);
        live.update(scene);
        Set<String> broken = new HashSet<>();
        for (int move = 0; move < moves; move++) {
            Placement placement = scenes.move(scene);
            scene = scene.with(placement);
            Ledger updated = live.update(scene);
            Ledger full = LedgerBuilder.full(book, scene);
            if (!updated.equals(full)) {
                assertThat(updated.rows())
                        .as("seed " + seed + ", move " + move + ", " + placement)
                        .isEqualTo(full.rows());
            }
            updated.rows().stream()
                    .filter(row -> row.verdict() == Verdict.BROKEN)
                    .forEach(row -> broken.add(row.limit()));
        }
        return broken;
    }

    @Test
    void aBuilderTakesAnyOtherSceneToo() {
        LimitBook book = Checker.standard().book();
        LedgerBuilder live = new LedgerBuilder(book);
        for (long seed = 0; seed < 10; seed++) {
            Scene scene = new RandomScenes(seed).scene(3 + (int) seed);

            assertThat(live.update(scene)).as("seed " + seed).isEqualTo(LedgerBuilder.full(book, scene));
        }
    }
}

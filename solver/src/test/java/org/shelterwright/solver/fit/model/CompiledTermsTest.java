package org.shelterwright.solver.fit.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.LedgerBuilder;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.LimitBook;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.access.AccessLimits;
import org.shelterwright.layouts.ledger.cables.CableLimits;
import org.shelterwright.layouts.ledger.fit.FitLimits;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.fit.kernel.State;

/** The compiled terms, the live ledger and the full ledger say the same after each of 100 000 moves on 20 layouts. */
class CompiledTermsTest {
    private static final int MOVES = 5_000;
    private static final int FULL_EVERY = 100;
    private static final Set<String> COMPILED = Set.of(
            "fit.inside",
            "fit.intrusion",
            "fit.overlap",
            "fit.shared-hole",
            "access.opening-swing",
            "access.zone-inside",
            "access.zone-free",
            "access.seats-apart",
            "access.exit-zone",
            "cables.plug-free");

    private final LimitBook book =
            new LimitBook(Stream.<List<Limit>>of(FitLimits.all(), AccessLimits.all(), CableLimits.all())
                    .flatMap(List::stream)
                    .filter(limit -> COMPILED.contains(limit.id()))
                    .toList());
    private final Checker checker = new Checker(book, List.of());

    static Stream<Long> seeds() {
        return Stream.iterate(1L, seed -> seed + 1).limit(20);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void compiledLiveAndFullLedgerAgreeAfterEveryMove(long seed) {
        JumbledLayout jumble = new JumbledLayout(seed, 7);
        Scene scene = checker.scene(jumble.layout());
        FitProblem problem = FitProblem.of(scene).relaxed(Set.of("access.zone-inside"));
        LedgerBuilder live = new LedgerBuilder(book);
        State state = new State(problem);
        state.restore(problem.start());
        long broken = 0;
        assertThat(book.limits()).hasSize(COMPILED.size());
        for (int move = 0; move < MOVES; move++) {
            var placement = jumble.move();
            scene = scene.with(placement);
            Spot[] spots = problem.spots(scene.layout());
            for (int slot = 0; slot < spots.length; slot++) {
                if (!Objects.equals(spots[slot], state.spot(slot))) {
                    state.put(slot, Objects.requireNonNull(spots[slot]));
                }
            }
            Map<String, Long> compiled = TermSheet.of(problem, spots);
            Ledger ledger = live.update(scene);
            assertThat(amounts(ledger))
                    .as("move %d of seed %d: %s", move, seed, placement)
                    .isEqualTo(nonZero(compiled));
            if (move % FULL_EVERY == 0) {
                assertThat(ledger).isEqualTo(LedgerBuilder.full(book, scene));
                State fresh = new State(problem);
                fresh.restore(spots);
                assertThat(state.score()).isEqualTo(fresh.score());
                broken += amounts(ledger).size();
            }
        }
        assertThat(broken).as("limits broken on the way").isGreaterThan(MOVES / FULL_EVERY);
    }

    private static Map<String, Long> amounts(Ledger ledger) {
        Map<String, Long> sums = new HashMap<>();
        for (Row row : ledger.rows()) {
            sums.merge(row.limit(), Math.round(row.excess() * 1000), Long::sum);
        }
        return nonZero(sums);
    }

    private static Map<String, Long> nonZero(Map<String, Long> sums) {
        Map<String, Long> left = new HashMap<>(sums);
        left.values().removeIf(amount -> amount == 0);
        return left;
    }
}

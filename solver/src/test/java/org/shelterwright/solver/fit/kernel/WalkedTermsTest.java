package org.shelterwright.solver.fit.kernel;

import static org.assertj.core.api.Assertions.assertThat;

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
import org.shelterwright.layouts.ledger.LimitBook;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.ledger.access.AccessLimits;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.JumbledLayout;
import org.shelterwright.solver.fit.model.Spot;

/**
 * What the search finds by walking the floor, over the heads of seated people and of the reach to controls holds if and
 * only if the live and the full ledger say so, after each of 100 000 moves on 20 layouts.
 */
class WalkedTermsTest {
    private static final int MOVES = 5_000;
    private static final int FULL_EVERY = 100;
    private static final Set<String> WAYS_IN = Set.of("access.walkway");
    private static final Set<String> WAYS_OUT = Set.of("access.way-out", "access.exit-count");
    private static final Set<String> HEIGHTS = Set.of("access.seat-headroom", "access.reach");

    /** Limits that {@link State} adds up with those tested here; left out so that the rest can be told. */
    private static final Set<String> OTHERS = Set.of(
            "access.zone-inside", "access.zone-free", "access.seats-apart", "access.exit-zone", "cables.plug-free");

    private static final Map<String, Double> RULES = Map.of(
            "access.walkway-width", 500.0,
            "access.walkway-headroom", 1900.0,
            "access.step-height", 50.0,
            "access.exit-width", 450.0,
            "access.exit-count", 2.0,
            "access.seat-headroom", 1300.0,
            "access.reach-highest", 1400.0);

    private final LimitBook book = new LimitBook(AccessLimits.all().stream()
            .filter(limit -> Stream.of(WAYS_IN, WAYS_OUT, HEIGHTS).anyMatch(ids -> ids.contains(limit.id())))
            .toList());
    private final Checker checker = new Checker(book, List.of());

    static Stream<Long> seeds() {
        return Stream.iterate(1L, seed -> seed + 1).limit(20);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void waysAndHeightsHoldIfAndOnlyIfTheLedgersSaySo(long seed) {
        JumbledLayout jumble = new JumbledLayout(seed, 6, false, RULES);
        Scene scene = checker.scene(jumble.layout());
        FitProblem problem = FitProblem.of(scene).relaxed(OTHERS);
        LedgerBuilder live = new LedgerBuilder(book);
        State state = new State(problem);
        state.restore(problem.start());
        int changes = 0;
        boolean before = false;
        for (int move = 0; move < MOVES; move++) {
            var placement = jumble.move();
            scene = scene.with(placement);
            Spot[] spots = problem.spots(scene.layout());
            for (int slot = 0; slot < spots.length; slot++) {
                if (!Objects.equals(spots[slot], state.spot(slot))) {
                    state.put(slot, Objects.requireNonNull(spots[slot]));
                }
            }
            state.walk();
            state.price(new Weights(0, 1));
            double waysIn = state.waysCost();
            state.price(new Weights(1, 0));
            double waysOut = state.waysCost();
            long heights = state.score().medium() - Math.round(1000 * waysIn);

            Ledger ledger = live.update(scene);

            String what = "move " + move + " of seed " + seed + ": " + placement;
            assertThat(waysIn == 0).as("ways in, %s", what).isEqualTo(holds(ledger, WAYS_IN));
            assertThat(waysOut == 0).as("ways out, %s", what).isEqualTo(holds(ledger, WAYS_OUT));
            assertThat(heights == 0).as("heights, %s", what).isEqualTo(holds(ledger, HEIGHTS));
            if (move % FULL_EVERY == 0) {
                assertThat(ledger).isEqualTo(LedgerBuilder.full(book, scene));
            }
            boolean now = waysIn + waysOut == 0;
            changes += now == before ? 0 : 1;
            before = now;
        }
        assertThat(changes).as("how often ways began or ceased to hold").isGreaterThan(5);
    }

    private static boolean holds(Ledger ledger, Set<String> limits) {
        return ledger.rows().stream()
                .filter(row -> row.verdict() == Verdict.BROKEN)
                .map(Row::limit)
                .noneMatch(limits::contains);
    }
}

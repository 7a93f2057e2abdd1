package org.shelterwright.solver.fit.kernel;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.catalog.space.Pose;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.LedgerBuilder;
import org.shelterwright.layouts.ledger.Limit;
import org.shelterwright.layouts.ledger.LimitBook;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.ledger.fit.FitLimits;
import org.shelterwright.layouts.ledger.mass.MassLimits;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.JumbledLayout;
import org.shelterwright.solver.fit.model.MomentLimits;
import org.shelterwright.solver.fit.model.Moments;
import org.shelterwright.solver.fit.model.RowAmount;
import org.shelterwright.solver.fit.model.Spot;

/**
 * What the search sums up over all units, held against the live and the full ledger after each of 100 000 moves on 20 layouts: loads on
 * supports always; limits on the centre of mass where a tangent was taken, and nowhere worse than the ledger says, as tangents of concave
 * margins must be. With uncertain masses tangents of other layouts are near, not exact: they may ask for up to 20 mm more.
 */
class SummedTermsTest {
    private static final int MOVES = 5_000;
    private static final int FULL_EVERY = 100;
    private static final int TANGENTS_EVERY = 50;
    private static final String SUPPORTS = "fit.support-rating";
    private static final Map<String, Double> RULES = Map.of(
            "mass.growth-weighed", 0.02,
            "mass.centre-x-low", 1350.0,
            "mass.centre-x-high", 1650.0,
            "mass.centre-y-off", 60.0,
            "mass.centre-z-high", 1050.0);

    private final LimitBook book = new LimitBook(Stream.<List<Limit>>of(FitLimits.all(), MassLimits.all())
            .flatMap(List::stream)
            .filter(limit -> limit.subject() == Subject.MASS || limit.id().equals(SUPPORTS))
            .toList());
    private final Checker checker = new Checker(book, List.of());

    static Stream<Long> seeds() {
        return Stream.iterate(1L, seed -> seed + 1).limit(20);
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void loadsAndCentresAgreeWithTheLedgers(long seed) {
        boolean certain = seed % 2 == 0;
        Map<String, Double> rules = new HashMap<>(RULES);
        rules.put("mass.uncertainty-weighed", certain ? 0 : 0.01);
        JumbledLayout jumble = new JumbledLayout(seed, 7, false, rules);
        Scene scene = checker.scene(jumble.layout());
        FitProblem problem = FitProblem.of(scene);
        LedgerBuilder live = new LedgerBuilder(book);
        State state = new State(problem);
        state.restore(problem.start());
        BerthLoads berths = new BerthLoads(problem, state);
        Planes planes = new Planes(new MomentLimits(book));
        int overloads = 0;
        int broken = 0;
        for (int move = 0; move < MOVES; move++) {
            Placement placement = resting(jumble.move(), scene);
            scene = scene.with(placement);
            Spot[] spots = problem.spots(scene.layout());
            for (int slot = 0; slot < spots.length; slot++) {
                if (!Objects.equals(spots[slot], state.spot(slot))) {
                    state.put(slot, Objects.requireNonNull(spots[slot]));
                }
            }
            boolean taken = move % TANGENTS_EVERY == 0;
            if (taken) {
                planes.touch(state);
            }
            Ledger ledger = live.update(scene);
            String what = "move " + move + " of seed " + seed + ": " + placement;

            long overload = berths.excess(0, state.option[0]);
            assertThat(overload).as("supports, %s", what).isEqualTo(excess(ledger, Subject.FIT));
            overloads += overload > 0 ? 1 : 0;

            long lacking = lacking(planes, state);
            long told = excess(ledger, Subject.MASS);
            if (taken) {
                assertThat(lacking)
                        .as("centre where a tangent was taken, %s", what)
                        .isBetween(told - 4, told + (certain ? 4 : 20_000));
            } else if (certain) {
                assertThat(lacking).as("centre elsewhere, %s", what).isLessThanOrEqualTo(told + 4);
            }
            broken += told > 0 ? 1 : 0;
            if (move % FULL_EVERY == 0) {
                assertThat(ledger).isEqualTo(LedgerBuilder.full(book, scene));
            }
        }
        assertThat(overloads).as("moves with an overloaded support").isGreaterThan(50);
        assertThat(broken).as("moves with a centre outside its window").isBetween(50, MOVES - 50);
    }

    /** What is thrown onto another unit lands on its top. */
    private static Placement resting(Placement placement, Scene scene) {
        String host = placement.station().host();
        if (host == null) {
            return placement;
        }
        PlacedUnit below = scene.unit(host).orElseThrow();
        Pose under = below.placement().station().pose();
        Point at = under.at().plus(new Point(0, 0, below.item().size().z()));
        return placement.withStation(
                placement.station().with(new Pose(at, placement.station().pose().yaw())));
    }

    private static long excess(Ledger ledger, Subject subject) {
        return ledger.rows().stream()
                .filter(row -> row.subject() == subject && row.verdict() == Verdict.BROKEN)
                .mapToLong(RowAmount::excess)
                .sum();
    }

    private static long lacking(Planes planes, State state) {
        Moments station = state.moments(true);
        Moments road = state.moments(false);
        double[] moments = {station.x(), station.y(), station.z(), station.xy(), road.x(), road.y(), road.z(), road.xy()
        };
        long[] sums = new long[2];
        planes.assess(moments, sums);
        return sums[0] + sums[1];
    }
}

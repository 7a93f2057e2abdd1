package org.shelterwright.solver.route;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.cable.CableNet;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.ledger.Ledger;
import org.shelterwright.layouts.ledger.Row;
import org.shelterwright.layouts.ledger.Subject;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.bench.PlantedWires;

/** Routing what a move concerns, held against routing all wires of the moved layout from nothing. */
class RerouteTest {
    private static final Checker CHECKER = Checker.standard();
    private static final int MOVES = 6;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void whatAMoveConcernsIsRoutedAsWellAsAll(long seed) {
        Layout bare = PlantedWires.of(seed, 20);
        Scene first = CHECKER.scene(bare);
        Scene scene = first.after(WireRouter.route(first).in(bare));
        SplittableRandom random = new SplittableRandom(seed);
        List<String> units = new ArrayList<>(bare.placements().keySet());
        for (int move = 0; move < MOVES; move++) {
            String unit = units.get(random.nextInt(units.size()));
            Point shift = new Point(50_000 * (random.nextInt(3) - 1), 50_000 * (random.nextInt(3) - 1), 0);
            Scene moved = scene.with(shifted(bare.placements().get(unit), shift));
            String name = "seed " + seed + ", move " + move + ", " + unit + " by " + shift;

            RoutePlan some = WireRouter.reroute(moved, Set.of(unit));
            RoutePlan all = WireRouter.route(CHECKER.scene(moved.layout().withRoutes(Map.of())));

            assertThat(some.within()).as(name).isEqualTo(all.within());
            assertThat(some.routes().keySet()).as(name).isEqualTo(all.routes().keySet());
            Layout ofSome = some.in(moved.layout());
            Layout ofAll = all.in(moved.layout());
            assertThat(broken(ofSome)).as(name).isEqualTo(broken(ofAll));
            assertThat(laid(ofSome)).as(name).isLessThanOrEqualTo(1.02 * laid(ofAll));
            assertThat(WireRouter.reroute(CHECKER.scene(moved.layout()), Set.of(unit)))
                    .as(name + ", with nothing known from before")
                    .isEqualTo(some);
        }
    }

    private static Placement shifted(Placement old, Point shift) {
        return old.withStation(old.station().with(old.station().pose().moved(shift)));
    }

    /** Which limits of cables are broken or not assessed, by place. */
    private static List<String> broken(Layout layout) {
        Ledger ledger = CHECKER.check(layout);
        return ledger.rows().stream()
                .filter(row -> row.subject() == Subject.CABLES)
                .filter(row -> row.verdict() == Verdict.BROKEN || row.verdict() == Verdict.NOT_ASSESSED)
                .map(Row::title)
                .sorted()
                .toList();
    }

    private static double laid(Layout layout) {
        return CableNet.of(CHECKER.scene(layout)).wires().stream()
                .mapToDouble(wire -> wire.shape() == null ? 0 : wire.shape().length() / 1e6)
                .sum();
    }
}

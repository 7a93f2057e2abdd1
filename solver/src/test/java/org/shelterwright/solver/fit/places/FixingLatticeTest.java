package org.shelterwright.solver.fit.places;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.catalog.space.Box;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.ledger.LedgerBuilder;
import org.shelterwright.layouts.ledger.LimitBook;
import org.shelterwright.layouts.ledger.Verdict;
import org.shelterwright.layouts.ledger.fit.FitLimits;
import org.shelterwright.layouts.ledger.fit.PlacedFixing;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.fit.kernel.Dice;
import org.shelterwright.solver.fit.model.FitProblem;
import org.shelterwright.solver.fit.model.Option;
import org.shelterwright.solver.fit.model.Slot;
import org.shelterwright.solver.fit.model.Spot;
import org.shelterwright.solver.fit.planted.PlantedFit;

class FixingLatticeTest {
    private final LimitBook hardPoints = new LimitBook(FitLimits.all().stream()
            .filter(limit -> limit.id().equals("fit.hard-point"))
            .toList());
    private final Checker checker = new Checker(hardPoints, List.of());

    @ParameterizedTest
    @ValueSource(longs = {1, 2})
    void everyAnchorBringsEveryFixingOntoAHardPoint(long seed) {
        FitProblem problem =
                FitProblem.of(checker.scene(PlantedFit.of(seed, 12, 0.1).question()));
        Dice dice = new Dice(seed);
        int[] place = new int[3];
        for (int round = 0; round < 50; round++) {
            Spot[] spots = new Spot[problem.size()];
            for (Slot slot : problem.slots()) {
                int o = dice.below(slot.options().size());
                Option option = slot.options().get(o);
                AnchorSet anchors = option.anchors(option.turn());
                if (anchors.points() > 0) {
                    anchors.point(dice.below(anchors.points()), place);
                } else {
                    Box area = anchors.areas().get(0);
                    place = new int[] {area.x1(), area.y1(), area.z1()};
                }
                assertThat(anchors.contains(place)).isTrue();
                spots[slot.index()] = new Spot(o, place[0], place[1], place[2]);
            }

            Scene scene = problem.scene(spots);

            assertThat(LedgerBuilder.full(hardPoints, scene).worst()).isEqualTo(Verdict.MET);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {3, 4})
    void theLatticeHoldsEveryAnchorThatAPlainSearchFinds(long seed) {
        Scene scene = checker.scene(PlantedFit.of(seed, 6, 0.1).solution());
        for (PlacedUnit unit : scene.units()) {
            var fixings = PlacedFixing.of(unit, org.shelterwright.catalog.item.Situation.ON_STATION);
            Box domain = new Box(-50_000, -50_000, 0, 50_000, 50_000, 0);

            List<Box> narrowed =
                    FixingLattice.narrow(domain, fixings, scene.body().hardPoints());

            int plain = 0;
            for (int x = -50_000; x <= 50_000; x += 5_000) {
                for (int y = -50_000; y <= 50_000; y += 5_000) {
                    int dx = x;
                    int dy = y;
                    boolean all = fixings.stream()
                            .allMatch(fixing -> scene.body().hardPoints().stream()
                                    .anyMatch(point -> point.takes(
                                            fixing.at().plus(new org.shelterwright.catalog.space.Point(dx, dy, 0)),
                                            fixing.face(),
                                            fixing.fixing().thread())));
                    boolean found = narrowed.stream()
                            .anyMatch(box -> box.contains(new org.shelterwright.catalog.space.Point(dx, dy, 0)));
                    assertThat(found).as("%s at %d, %d", unit.id(), x, y).isEqualTo(all);
                    plain += all ? 1 : 0;
                }
            }
            assertThat(plain).isPositive();
        }
    }
}

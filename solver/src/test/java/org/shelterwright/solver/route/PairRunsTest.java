package org.shelterwright.solver.route;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.check.Checker;
import org.shelterwright.layouts.layout.Layout;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.solver.bench.PlantedWires;

/** The few runs that a wire is given, held against all runs to all trays. */
class PairRunsTest {
    private static final Checker CHECKER = Checker.standard();

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void cheapestWaysOverFewRunsCostNoMoreThanOverAll(long seed) {
        Layout layout = PlantedWires.of(seed, 20);
        List<Placement> placements = List.copyOf(layout.placements().values());
        for (int i = (int) (seed + 2) % 3; i < placements.size(); i += 3) {
            Placement old = placements.get(i);
            Scene scene = CHECKER.scene(layout.with(old.withStation(old.station()
                    .with(old.station().pose().moved(new Point(seed % 2 == 0 ? 50_000 : -50_000, 0, 0))))));
            List<Ask> asks = new Routing(scene, Map.of()).asks();

            Laid few = new Pass(scene, Map.of(), new Drops(scene), asks, Set.of(), true).lay();
            Laid all = new Pass(scene, Map.of(), new Drops(scene), asks, Set.of(), false).lay();

            assertThat(few.routes().keySet()).isEqualTo(all.routes().keySet());
            assertThat(few.cost()).as("seed %d, %s moved", seed, old.unit()).isCloseTo(all.cost(), within(1e-9));
        }
    }
}

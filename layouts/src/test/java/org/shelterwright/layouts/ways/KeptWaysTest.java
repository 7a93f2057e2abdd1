package org.shelterwright.layouts.ways;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.BitSet;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.layout.Placement;
import org.shelterwright.layouts.scene.PlacedUnit;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.trial.Trial;
import org.shelterwright.layouts.trial.TrialBody;
import org.shelterwright.layouts.trial.TrialItem;

/** What is remembered over scenes must give what asking afresh gives. */
class KeptWaysTest {
    private static final int UNITS = 6;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void agreesWithAskingAfresh(long seed) {
        Random random = new Random(seed);
        Trial trial = Trial.in(TrialBody.of(3000, 1600, 1800).rearDoor(400, 1200));
        for (int i = 0; i < UNITS; i++) {
            TrialItem item = TrialItem.of(
                    "i" + i,
                    50 * (4 + random.nextInt(10)),
                    50 * (4 + random.nextInt(12)),
                    50 * (6 + random.nextInt(20)));
            trial.floor("u" + i, item, 100 + 450 * i, 50 * random.nextInt(14));
        }
        Scene scene = trial.scene();
        int free = 0;
        int stuck = 0;
        for (int move = 0; move < 60; move++) {
            PlacedUnit moved = scene.units().get(random.nextInt(UNITS));
            Placement placement = moved.placement();
            Point shift = Point.ofMm(50 * (random.nextInt(7) - 3), 50 * (random.nextInt(7) - 3), 0);
            scene = scene.with(placement.withStation(
                    placement.station().with(placement.station().pose().moved(shift))));
            Scene fresh = Scene.of(scene.layout(), scene.rules());
            BitSet gone = new BitSet();
            for (int i = 0; i < UNITS; i++) {
                gone.set(i, random.nextInt(3) == 0);
            }
            for (int i = 0; i < UNITS; i++) {
                boolean kept = new KeptWays(scene).free(scene.units().get(i), gone);
                boolean asked =
                        new UnitWays(fresh).out(fresh.units().get(i), gone).free();

                assertThat(kept).as("seed %d, move %d, unit %d", seed, move, i).isEqualTo(asked);
                free += asked ? 1 : 0;
                stuck += asked ? 0 : 1;
            }
        }
        assertThat(free).isGreaterThan(20);
        assertThat(stuck).isGreaterThan(20);
    }
}

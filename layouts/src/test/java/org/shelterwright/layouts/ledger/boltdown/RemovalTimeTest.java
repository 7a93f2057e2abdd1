package org.shelterwright.layouts.ledger.boltdown;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.space.Face;
import org.shelterwright.catalog.space.Point;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.trial.Trial;
import org.shelterwright.layouts.trial.TrialBody;
import org.shelterwright.layouts.trial.TrialItem;
import org.shelterwright.layouts.ways.Removal;

/** The time to take units out against a sum by hand. */
class RemovalTimeTest {
    private static TrialItem box(String id) {
        return TrialItem.of(id, 500, 500, 500)
                .mass(40.0, null)
                .fixing(Point.ofMm(50, 50, 0), Face.BOTTOM, "M8")
                .fixing(Point.ofMm(450, 450, 0), Face.BOTTOM, "M8");
    }

    private static Trial trial() {
        return Trial.in(TrialBody.of(4000, 1000, 1000).rearDoor(0, 1000))
                .floor("front", box("front"), 3500, 250)
                .floor("rear", box("rear"), 1000, 250);
    }

    private static double minutes(Trial trial, List<String> first) {
        Scene scene = trial.scene();
        Removal removal = new Removal(
                scene.unit("front").orElseThrow(),
                true,
                first.stream().map(id -> scene.unit(id).orElseThrow()).toList());
        return new RemovalTime(scene).minutes(removal);
    }

    @Test
    void fixingsReadinessAndWayAdd() {
        Trial trial = trial().limit(Figure.MINUTES_PER_FIXING, 3)
                .limit(Figure.MINUTES_IN, 8)
                .limit(Figure.MINUTES_PER_METRE, 0.5);

        // Two fixings, made ready, and from 3 500 mm out through the rear wall until all 500 mm of it are beyond.
        double alone = minutes(trial, List.of());
        assertThat(alone).isBetween(2 * 3 + 8 + 0.5 * 4.0, 2 * 3 + 8 + 0.5 * 4.5);
        double both = minutes(trial, List.of("rear"));
        assertThat(both - alone).isCloseTo(alone - 0.5 * 2.5, within(1e-9));
    }

    @Test
    void withoutTimesInTheRulesNothingIsSaid() {
        assertThat(minutes(trial(), List.of("rear"))).isZero();
    }
}

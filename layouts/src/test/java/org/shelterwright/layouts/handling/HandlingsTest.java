package org.shelterwright.layouts.handling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.item.Surface;
import org.shelterwright.catalog.space.QuarterTurn;
import org.shelterwright.layouts.handling.Handling.Means;
import org.shelterwright.layouts.rules.Figure;
import org.shelterwright.layouts.scene.Scene;
import org.shelterwright.layouts.trial.Trial;
import org.shelterwright.layouts.trial.TrialBody;
import org.shelterwright.layouts.trial.TrialItem;

class HandlingsTest {
    private static Handling of(double kg, int heightMm) {
        Scene scene = Trial.in(TrialBody.of(4000, 2000, 2000))
                .rules("shelter-common")
                .put(
                        "box",
                        TrialItem.of("box", 400, 400, 400).on(Surface.WALL).mass(kg, null),
                        Trial.at(Surface.WALL, 0, 0, heightMm, QuarterTurn.R0))
                .scene();
        return new Handlings(scene.rules()).of(scene.units().get(0)).orElseThrow();
    }

    @Test
    void aLightBoxIsLiftedByOnePerson() {
        Handling handling = of(5, 700);

        assertThat(handling.means()).isEqualTo(Means.BY_HAND);
        assertThat(handling.people()).isEqualTo(1);
        // H = 25 + 40/2 = 45 cm, V = 20 cm, D = 70 cm, A = 45°: 23 x .556 x .835 x .884 x .856 x .95
        assertThat(handling.limitKg()).isCloseTo(7.68, within(0.02));
    }

    @Test
    void aHeavyBoxStandsOnTheFloorByTrolleyAndHangsByHoist() {
        assertThat(of(80, 0).means()).isEqualTo(Means.TROLLEY);
        assertThat(of(80, 700).means()).isEqualTo(Means.HOIST);
        assertThat(of(260, 700).held()).isFalse();
    }

    @Test
    void whatHangsHighIsLiftedFromAStepPlatform() {
        Scene scene = Trial.in(TrialBody.of(4000, 2000, 2000))
                .rules("shelter-common")
                .put(
                        "lamp",
                        TrialItem.of("lamp", 400, 100, 60).on(Surface.ROOF).mass(3.0, null),
                        Trial.at(Surface.ROOF, 0, 0, 1940, QuarterTurn.R0))
                .scene();

        assertThat(Handlings.fromPlatform(scene.units().get(0))).isTrue();
        assertThat(new Handlings(scene.rules())
                        .of(scene.units().get(0))
                        .orElseThrow()
                        .held())
                .isTrue();
    }

    @Test
    void withoutMassOrFigureNothingIsSaid() {
        Scene scene = Trial.in(TrialBody.of(4000, 2000, 2000))
                .floor("box", TrialItem.of("box", 400, 400, 400), 0, 0)
                .scene();

        assertThat(new Handlings(scene.rules()).missing()).contains(Figure.LIFT_CONSTANT);
        assertThat(new Handlings(scene.rules()).of(scene.units().get(0))).isEmpty();
    }
}

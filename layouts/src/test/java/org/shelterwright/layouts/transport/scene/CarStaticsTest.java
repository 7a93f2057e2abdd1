package org.shelterwright.layouts.transport.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.shelterwright.layouts.transport.TransportRig;

class CarStaticsTest {
    private static CarStatics statics(int x, int y, double kg) {
        return CarStatics.of(new TransportRig()
                        .on(TransportRig.plainCar(10_000, 2_500, 1.0))
                        .crate("a", x, y, 0, 1000, 1000, 1000, kg)
                        .load())
                .orElseThrow();
    }

    /** Computed: a centre that lies 83.3 mm off on wheels 1.5 m apart gives (0.75 + e) / (0.75 − e) = 1.25. */
    @Test
    void aCentreOffByAnEighteenthOfTheWheelsGivesARatioOfOneAndAQuarter() {
        CarStatics statics = CarStatics.of(new TransportRig()
                        .on(TransportRig.plainCar(12_000, 2_500, 1.0))
                        .crate("a", 5_500, 833, 0, 1000, 1000, 1000, 9_000.0)
                        .load())
                .orElseThrow();

        assertThat(statics.groups().get(0).sideRatio()).isCloseTo(1.25, within(0.002));
        assertThat(statics.groups().get(0).leftKg()).isCloseTo(4_500 * 0.5556, within(2.0));
    }

    @Test
    void sharesAMassByItsPlaceBetweenTheAxles() {
        CarStatics statics = statics(7_000, 750, 4_000);

        assertThat(statics.groups().get(1).kg()).isCloseTo(3_000, within(1e-6));
        assertThat(statics.groups().get(0).kg()).isCloseTo(1_000, within(1e-6));
        assertThat(statics.ratio()).isCloseTo(3, within(1e-9));
        assertThat(statics.greatestAxleKg()).isCloseTo(3_000, within(1e-6));
        assertThat(statics.groups().get(0).sideRatio()).isCloseTo(1, within(1e-9));
    }

    @Test
    void aLiftedEndOrSideHasAnInfiniteRatio() {
        assertThat(statics(10_500, 750, 1_000).ratio()).isInfinite();
        assertThat(statics(4_500, -500, 1_000).groups().get(0).sideRatio()).isInfinite();
    }
}

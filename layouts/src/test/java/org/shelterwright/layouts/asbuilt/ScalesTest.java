package org.shelterwright.layouts.asbuilt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.shelterwright.layouts.asbuilt.Weighing.Support;
import org.shelterwright.layouts.asbuilt.Weighing.Tilt;

class ScalesTest {
    private static final int M = 1_000_000;

    private static Weighing axles(
            double rear, double front, @Nullable Double rearT, @Nullable Double frontT, @Nullable Tilt tilt) {
        return new Weighing(
                "truck",
                "2026-01-15",
                null,
                List.of(new Support("rear", 0, 0, rear, rearT, 10), new Support("front", 4 * M, 0, front, frontT, 10)),
                450_000,
                tilt,
                List.of());
    }

    /** Two axles, distance of the centre from the front one a = L F_rear / F_total (statics, check 9.3). */
    @Test
    void theCentreDividesTheWheelbaseAsTheReadings() {
        Balance balance = Scales.of(axles(5000, 3000, null, null, null));

        assertThat(balance.kg()).isEqualTo(8000);
        assertThat(4 - balance.xM()).isCloseTo(4 * 5000 / 8000.0, within(1e-12));
        assertThat(balance.zM()).isNull();
    }

    /**
     * Worked by hand from h = r + L dF / (W tan θ): L = 4 m, W = 8000 kg, r = 0.45 m, h = 1.2 m, θ = 10° with the rear raised gives
     * dF = 264.49 kg more on the front axle.
     */
    @Test
    void aTiltedWeighingGivesTheHeight() {
        double shift = 8000 * 0.75 * Math.tan(Math.toRadians(10)) / 4;
        assertThat(shift).isCloseTo(264.49, within(0.005));

        Balance balance = Scales.of(axles(5000, 3000, 5000 - shift, 3000 + shift, new Tilt(-10, 0)));

        assertThat(balance.zM()).isCloseTo(1.2, within(1e-9));
    }

    @Test
    void raisingTheFrontGivesTheSameHeight() {
        double shift = 8000 * 0.75 * Math.tan(Math.toRadians(10)) / 4;

        Balance balance = Scales.of(axles(5000, 3000, 5000 + shift, 3000 - shift, new Tilt(10, 0)));

        assertThat(balance.zM()).isCloseTo(1.2, within(1e-9));
    }

    @Test
    void rangesAddAsTheRootOfSquares() {
        Balance balance = Scales.of(axles(4000, 4000, null, null, null));

        assertThat(balance.kgRange()).isCloseTo(Math.sqrt(200), within(1e-9));
        assertThat(balance.xRangeM()).isCloseTo(2.0 / 8000 * 10 * Math.sqrt(2), within(1e-12));
    }

    @Test
    void saysWhatIsWrongWithReadings() {
        assertThatThrownBy(() -> new Tilt(0.5, 0))
                .hasMessage("A tilt of 0.5° is too little to tell a height: tilt by 5° or more.");
        assertThatThrownBy(() -> axles(0, 0, null, null, null))
                .hasMessage("The scales read nothing: enter the readings.");
        assertThatThrownBy(() -> axles(1, 1, null, null, new Tilt(5, 0)))
                .hasMessage("A tilted weighing needs a tilted reading of every support.");
        assertThatThrownBy(() -> new Weighing("truck", "2026-01-15", null, List.of(), 0, null, List.of()))
                .hasMessage("A weighing needs two supports at least.");
    }
}

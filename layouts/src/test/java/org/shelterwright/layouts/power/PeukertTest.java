package org.shelterwright.layouts.power;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.shelterwright.catalog.item.Battery;

class PeukertTest {
    /** Worked number printed with the law: C_p = 100 Ah at 1 A, k = 1.2, I = 5 A: 14.5 h. Read in a copy of it. */
    @Test
    void agreesWithThePublishedExampleAtOneAmpere() {
        assertThat(Peukert.hours(100, 100, 1.2, 5)).isCloseTo(14.5, within(0.005));
    }

    /** 100 Ah at 20 h, k = 1.2, I = 10 A: 8.706 h. Computed from the published form of the law for a rated time. */
    @Test
    void agreesWithTheFormForARatedTime() {
        assertThat(Peukert.hours(100, 20, 1.2, 10)).isCloseTo(8.706, within(0.0005));
    }

    /** k = (log t2 − log t1) / (log I1 − log I2): the exponent comes back from two times. */
    @Test
    void givesBackItsExponentFromTwoTimes() {
        double t1 = Peukert.hours(220, 20, 1.15, 20);
        double t2 = Peukert.hours(220, 20, 1.15, 60);

        assertThat((Math.log(t2) - Math.log(t1)) / (Math.log(20) - Math.log(60)))
                .isCloseTo(1.15, within(1e-12));
    }

    @Test
    void givesNoMoreThanTheRatedCapacityBelowTheRatedCurrent() {
        assertThat(Peukert.hours(100, 20, 1.2, 5)).isEqualTo(20.0);
        assertThat(Peukert.hours(100, 20, 1.2, 2.5)).isEqualTo(40.0);
    }

    @Test
    void takesOnlyTheUsableShareOfAnAgedBattery() {
        Battery battery = new Battery(24, 100, 20, 1.2, 0.5, null, null, 28.8);

        assertThat(Peukert.hours(battery, 1, 10)).isCloseTo(8.706 / 2, within(0.0005));
        assertThat(Peukert.hours(battery, 0.8, 10)).isCloseTo(8.706 / 2 * Math.pow(0.8, 1.2), within(0.0005));
    }
}

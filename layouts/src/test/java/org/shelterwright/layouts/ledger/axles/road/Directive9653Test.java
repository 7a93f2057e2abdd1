package org.shelterwright.layouts.ledger.axles.road;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Directive 96/53/EC, Annex I, as quoted in national texts; distances to the micrometre at each boundary. */
class Directive9653Test {
    @ParameterizedTest
    @CsvSource({
        "999999, 11000, 11500, 11500",
        "1000000, 16000, 16000, 16000",
        "1299999, 16000, 16000, 16000",
        "1300000, 18000, 18000, 19000",
        "1799999, 18000, 18000, 19000",
        "1800000, 20000, 20000, 20000"
    })
    void tandemClassesBeginAtTheirLowerDistance(int distance, double trailer, double motor, double twinAndAir) {
        assertThat(Directive9653.tandemKg(false, distance, false)).isEqualTo(trailer);
        assertThat(Directive9653.tandemKg(true, distance, false)).isEqualTo(motor);
        assertThat(Directive9653.tandemKg(true, distance, true)).isEqualTo(twinAndAir);
    }

    @Test
    void triAxleClassesEndAtTheirUpperDistance() {
        assertThat(Directive9653.triAxleKg(1_300_000)).hasValue(21_000);
        assertThat(Directive9653.triAxleKg(1_300_001)).hasValue(24_000);
        assertThat(Directive9653.triAxleKg(1_400_000)).hasValue(24_000);
        assertThat(Directive9653.triAxleKg(1_400_001)).isEmpty();
    }

    @Test
    void singleAxlesBearMoreIfDriving() {
        assertThat(Directive9653.singleAxleKg(false)).isEqualTo(10_000);
        assertThat(Directive9653.singleAxleKg(true)).isEqualTo(11_500);
    }

    @Test
    void motorVehiclesByAxlesTyresAndDistance() {
        assertThat(Directive9653.motorVehicleKg(2, 1, 4_000_000, false)).hasValue(18_000);
        assertThat(Directive9653.motorVehicleKg(3, 1, 5_000_000, false)).hasValue(25_000);
        assertThat(Directive9653.motorVehicleKg(3, 1, 5_000_000, true)).hasValue(26_000);
        assertThat(Directive9653.motorVehicleKg(4, 2, 6_400_000, true)).hasValue(32_000);
        assertThat(Directive9653.motorVehicleKg(4, 2, 6_000_000, true)).hasValue(30_000);
        assertThat(Directive9653.motorVehicleKg(4, 1, 6_400_000, true)).isEmpty();
        assertThat(Directive9653.motorVehicleKg(4, 2, 6_400_000, false)).isEmpty();
        assertThat(Directive9653.motorVehicleKg(5, 2, 8_000_000, true)).isEmpty();
    }

    @Test
    void trailersByAxles() {
        assertThat(Directive9653.trailerKg(1)).isEmpty();
        assertThat(Directive9653.trailerKg(2)).hasValue(18_000);
        assertThat(Directive9653.trailerKg(3)).hasValue(24_000);
    }
}

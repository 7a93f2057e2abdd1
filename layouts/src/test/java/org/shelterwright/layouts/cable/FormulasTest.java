package org.shelterwright.layouts.cable;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.shelterwright.catalog.cable.Conductors;
import org.shelterwright.catalog.space.Point;

class FormulasTest {
    private static final double FOOT_M = 0.3048;

    /** IEC 60228: factor that brings a measurement to 20 °C, the inverse of ours; seen as quoted. */
    @ParameterizedTest
    @CsvSource({
        "5,1.064",
        "10,1.042",
        "30,0.962",
        "40,0.926",
        "50,0.893",
        "70,0.833",
        "75,0.820",
        "90,0.781",
        "100,0.758"
    })
    void resistanceRisesWithTemperatureAsTheStandardSays(double temperatureC, double toTwenty) {
        assertThat(1 / Resistance.factor(temperatureC)).isCloseTo(toTwenty, within(6e-4));
    }

    @Test
    void resistanceAtTwentyDegreesIsThatOfTheTable() {
        assertThat(Resistance.ohmPerM(new Conductors(3, 4, 5, 4.95), 20)).isCloseTo(4.95e-3, within(1e-12));
    }

    /** NEC chapter 9, table 8: no. 16 copper, 4.99 Ω per 1000 ft; 100 ft, 4 A: 4.0 V, 16.7 % of 24 V (rounded first); seen. */
    @Test
    void aHundredFeetOfNumberSixteenLoseFourVolts() {
        double volts = VoltageDrop.volts(1, 100 * FOOT_M, 4, 4.99 / (1000 * FOOT_M));

        assertThat(volts).isCloseTo(3.992, within(1e-9));
        assertThat(volts).isCloseTo(4.0, within(0.05));
        assertThat(volts / 24).isCloseTo(0.167, within(0.002));
    }

    /** Number 12, 50 ft, 16 A: the loop has 159 mΩ and loses 2.54 V, 2.1 % of 120 V; seen. */
    @Test
    void fiftyFeetOfNumberTwelveLoseTwoAndAHalfVolts() {
        double volts = VoltageDrop.volts(1, 50 * FOOT_M, 16, 0.159 / 2 / (50 * FOOT_M));

        assertThat(volts).isCloseTo(2.54, within(0.01));
        assertThat(volts / 120).isCloseTo(0.021, within(5e-4));
    }

    @Test
    void threePhasesLoseHalfAsMuchAgainstTheNeutral() {
        assertThat(VoltageDrop.volts(3, 10, 16, 0.005)).isEqualTo(VoltageDrop.volts(1, 10, 16, 0.005) / 2);
    }

    /**
     * NEC chapter 9, table 1: 53, 31, 40 %. Three no. 8 and three no. 6 (THHN, 0.0366 and 0.0507 in²) need 0.2619/0.40 = 0.6548 in²
     * inside: the 3/4 in tube (0.533) is too small, the 1 in (0.864) serves; seen.
     */
    @Test
    void sixConductorsFitTheOneInchTubeAndNotTheThreeQuarter() {
        double area = 3 * 0.0366 + 3 * 0.0507;

        assertThat(area).isCloseTo(0.2619, within(1e-9));
        assertThat(area / 0.533).isGreaterThan(Fill.NEC.most(true, 6));
        assertThat(area / 0.864).isLessThan(Fill.NEC.most(true, 6));
        assertThat(Fill.NEC.most(true, 1)).isEqualTo(0.53);
        assertThat(Fill.NEC.most(true, 2)).isEqualTo(0.31);
        assertThat(Fill.NEC.always(true)).isEqualTo(0.31);
    }

    /** EMT inside areas (in²) and 40 % of them, NEC chapter 9, table 4; seen. */
    @ParameterizedTest
    @CsvSource({"0.304,0.122", "0.533,0.213", "0.864,0.346"})
    void fortyPercentOfATubeIsWhatTheTableSays(double inside, double share) {
        assertThat(inside * Fill.NEC.more()).isCloseTo(share, within(5e-4));
    }

    @Test
    void spareComesAtBothEndsAndForLaying() {
        assertThat(CutLength.of(6_000_000, 150_000, 0.05)).isEqualTo(6_620_000);
        assertThat(CutLength.of(1_000_000, 0, 0)).isEqualTo(1_000_000);
        assertThat(CutLength.of(1_000_001, 0, 0)).isEqualTo(1_010_000);
    }

    @Test
    void aStraightBetweenTwoCornersHasRoomForHalfItsLength() {
        List<Point> path =
                List.of(Point.ofMm(0, 0, 0), Point.ofMm(0, 0, 100), Point.ofMm(150, 0, 100), Point.ofMm(150, 300, 100));

        Bends.Tightest tightest = Bends.of(path);

        assertThat(tightest).isEqualTo(new Bends.Tightest(75_000, Point.ofMm(0, 0, 100)));
        assertThat(Bends.of(path.subList(0, 2))).isNull();
        assertThat(Bends.of(path.subList(0, 3))).isEqualTo(new Bends.Tightest(100_000, Point.ofMm(0, 0, 100)));
    }
}

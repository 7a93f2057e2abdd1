package org.shelterwright.layouts.handling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Held against the applications manual for the revised NIOSH lifting equation, DHHS (NIOSH) 94-110, rev. 9/2021. Its tables
 * round to two decimals, which is worth up to 3 %.
 */
class RevisedLiftingTest {
    private static final double CM = 2.54;
    private static final double LB = 0.45359237;

    /** Example 1, "Loading Punch Press Stock", pages 33 to 37: H = 23 in, D = 48 in, A = 0, below 0.2 a minute, fair. */
    private static RevisedLifting punchPress(double verticalIn, double grip) {
        return new RevisedLifting(51 * LB, 23 * CM, verticalIn * CM, 48 * CM, 0, 0.2, grip);
    }

    @Test
    void loadingPunchPressStockComesToThePublishedLimit() {
        RevisedLifting origin = punchPress(15, 0.95);

        assertThat(origin.limitKg() / LB).isCloseTo(16.3, within(0.03 * 16.3));
        assertThat(origin.index(44 * LB)).isCloseTo(2.7, within(0.03 * 2.7));
    }

    @Test
    void theExactFormulasAgreeWithTheInchForm() {
        assertThat(punchPress(15, 0.95).limitKg() / LB).isCloseTo(16.03, within(0.08));
        assertThat(punchPress(63, 1).limitKg() / LB).isCloseTo(14.31, within(0.08));
    }

    @Test
    void theBestConditionsGiveTheLoadConstant() {
        assertThat(new RevisedLifting(23, 25, 75, 25, 0, 0.2, 1).limitKg()).isEqualTo(23, within(1e-9));
    }

    @Test
    void nothingMayBeLiftedBeyondTheEndsOfEachMultiplier() {
        assertThat(new RevisedLifting(23, 63.1, 75, 25, 0, 0.2, 1).limitKg()).isZero();
        assertThat(new RevisedLifting(23, 25, 175.1, 25, 0, 0.2, 1).limitKg()).isZero();
        assertThat(new RevisedLifting(23, 25, 75, 175.1, 0, 0.2, 1).limitKg()).isZero();
        assertThat(new RevisedLifting(23, 25, 75, 25, 135.1, 0.2, 1).limitKg()).isZero();
        assertThat(new RevisedLifting(23, 25, 75, 25, 0, 12.1, 1).limitKg()).isZero();
        assertThat(new RevisedLifting(23, 25, 75, 25, 0, 12.1, 1).index(1)).isInfinite();
    }

    @Test
    void frequencyFollowsTheTableForAnHour() {
        // 94-110, table 5, up to one hour, V below 75 cm.
        assertThat(new RevisedLifting(23, 25, 75, 25, 0, 1, 1).frequency()).isEqualTo(0.94);
        assertThat(new RevisedLifting(23, 25, 75, 25, 0, 6, 1).frequency()).isEqualTo(0.75);
        assertThat(new RevisedLifting(23, 25, 75, 25, 0, 5.33, 1).frequency()).isEqualTo(0.75);
    }
}

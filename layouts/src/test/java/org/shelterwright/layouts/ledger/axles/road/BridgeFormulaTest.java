package org.shelterwright.layouts.ledger.axles.road;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Values of 23 CFR 658.17 and of the FHWA pamphlet "Bridge Formula Weights", August 2019. */
class BridgeFormulaTest {
    private static final int FOOT = BridgeFormula.FOOT;
    private static final int INCH = BridgeFormula.INCH;

    /** Exact values of the formula, and table entries (from memory where the formula does not fall on a multiple of 500 lb). */
    @ParameterizedTest
    @CsvSource({
        "2, 4, 34000", "2, 9, 39000", "2, 10, 40000", "3, 10, 43500", "3, 12, 45000", "3, 20, 51000",
        "4, 12, 50000", "4, 20, 55500", "4, 36, 66000", "4, 38, 67500", "5, 48, 78000", "5, 51, 80000"
    })
    void agreesWithTheTable(int axles, int feet, int lb) {
        assertThat(BridgeFormula.formulaLb(feet, axles)).isEqualTo(lb);
        if (feet > 8) {
            assertThat(BridgeFormula.allowedLb(feet * FOOT, axles)).isEqualTo(lb);
        }
    }

    /** The formula gives exactly 42 750 and 44 250 lb; the printed table shows the lower neighbour (from memory). */
    @ParameterizedTest
    @CsvSource({"3, 9, 42500", "3, 11, 44000"})
    void tiesGoDown(int axles, int feet, int lb) {
        assertThat(BridgeFormula.allowedLb(feet * FOOT, axles)).isEqualTo(lb);
    }

    /** Rows "8 and less" and "more than 8" of the table (from memory). */
    @Test
    void theClassChangesJustBeyondEightFeet() {
        assertThat(BridgeFormula.allowedLb(8 * FOOT, 2)).isEqualTo(34_000);
        assertThat(BridgeFormula.allowedLb(8 * FOOT + 1, 2)).isEqualTo(38_000);
        assertThat(BridgeFormula.allowedLb(8 * FOOT, 3)).isEqualTo(34_000);
        assertThat(BridgeFormula.allowedLb(8 * FOOT + 1, 3)).isEqualTo(42_000);
        assertThat(BridgeFormula.allowedLb(9 * FOOT - 1, 2)).isEqualTo(38_000);
    }

    /** 23 CFR 658.17(d): axles up to 40 in apart count as one, above that and up to 96 in as a tandem. */
    @Test
    void axlesCloseTogetherCountAsOne() {
        assertThat(BridgeFormula.allowedLb(40 * INCH, 2)).isEqualTo(20_000);
        assertThat(BridgeFormula.allowedLb(40 * INCH + 1, 2)).isEqualTo(34_000);
    }

    @Test
    void distancesAreMeasuredToTheNearestFootAndHalvesGoDown() {
        assertThat(BridgeFormula.nearestFoot(10 * FOOT + FOOT / 2)).isEqualTo(10);
        assertThat(BridgeFormula.nearestFoot(10 * FOOT + FOOT / 2 + 1)).isEqualTo(11);
        assertThat(BridgeFormula.nearestFoot(10 * FOOT - FOOT / 2 + 1)).isEqualTo(10);
    }
}

package org.shelterwright.layouts.ledger.lifting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class FourPointsTest {
    /** Corners (1, 2), (1, 5), (5, 2), (5, 5): sides 4 and 3, diagonal 5. */
    private static final FourPoints POINTS = new FourPoints(1, 5, 2, 5);

    @Test
    void sharesOfAllFourBalanceTheMassAboutBothAxes() {
        double[] shares = POINTS.shares(2, 4);

        assertThat(shares).containsExactly(new double[] {0.25, 0.5, 1 / 12.0, 1 / 6.0}, within(1e-12));
        double x = 0;
        double y = 0;
        for (int i = 0; i < 4; i++) {
            x += shares[i] * POINTS.x(i);
            y += shares[i] * POINTS.y(i);
        }
        assertThat(x).isCloseTo(2, within(1e-12));
        assertThat(y).isCloseTo(4, within(1e-12));
    }

    /** Where the mass hangs straight below a diagonal, the two legs of that diagonal share it by their distances. */
    @Test
    void twoLegsAcrossShareByTheirDistances() {
        double[] onOne = POINTS.sharesOfTwo(1 + 0.25 * 4, 2 + 0.25 * 3);
        double[] onTheOther = POINTS.sharesOfTwo(1 + 0.25 * 4, 5 - 0.25 * 3);

        assertThat(onOne[0]).isCloseTo(0.75, within(1e-12));
        assertThat(onOne[3]).isCloseTo(0.25, within(1e-12));
        assertThat(onTheOther[1]).isCloseTo(0.75, within(1e-12));
        assertThat(onTheOther[2]).isCloseTo(0.25, within(1e-12));
        assertThat(POINTS.sharesOfTwo(-10, -10)[0]).isEqualTo(1);
        assertThat(POINTS.sharesOfTwo(20, 20)[3]).isEqualTo(1);
    }

    @Test
    void itsMiddleAndSizesAreThoseOfTheRectangle() {
        assertThat(POINTS.middleX()).isEqualTo(3);
        assertThat(POINTS.middleY()).isEqualTo(3.5);
        assertThat(POINTS.halfDiagonal()).isEqualTo(2.5);
        assertThat(POINTS.farthest(1, 2)).isEqualTo(5);
        assertThat(POINTS.farthest(5, 5)).isEqualTo(5);
        assertThat(POINTS.farthest(2, 5)).isCloseTo(Math.hypot(3, 3), within(1e-12));
    }

    @Test
    void itHoldsItsEdgesAndNothingBeyond() {
        assertThat(POINTS.holds(1, 2)).isTrue();
        assertThat(POINTS.holds(5, 5)).isTrue();
        assertThat(POINTS.holds(3, 3)).isTrue();
        assertThat(POINTS.holds(0.99, 3)).isFalse();
        assertThat(POINTS.holds(5.01, 3)).isFalse();
        assertThat(POINTS.holds(3, 1.99)).isFalse();
        assertThat(POINTS.holds(3, 5.01)).isFalse();
    }

    @Test
    void pointsInALineSpanNothing() {
        assertThatThrownBy(() -> new FourPoints(1, 1, 2, 5)).hasMessage("Four points must span an area.");
        assertThatThrownBy(() -> new FourPoints(1, 5, 2, 2)).hasMessage("Four points must span an area.");
    }
}

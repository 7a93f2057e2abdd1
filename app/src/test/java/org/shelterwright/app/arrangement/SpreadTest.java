package org.shelterwright.app.arrangement;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class SpreadTest {

    @Test
    void placesThatAreFarEnoughApartStay() {
        assertThat(Spread.apart(new double[] {0, 5, 10}, 4)).containsExactly(0, 5, 10);
    }

    @Test
    void placesThatCollideMoveApartAroundTheirMiddle() {
        assertThat(Spread.apart(new double[] {10, 11}, 4)).containsExactly(8.5, 12.5);
        assertThat(Spread.apart(new double[] {10, 10, 10, 30}, 4)).containsExactly(6, 10, 14, 30);
    }

    @Test
    void aGroupThatGrowsTakesItsNeighboursIn() {
        double[] spread = Spread.apart(new double[] {0, 1, 2, 6, 7, 20}, 3);

        for (int i = 1; i < spread.length; i++) {
            assertThat(spread[i] - spread[i - 1]).isGreaterThanOrEqualTo(3 - 1e-12);
        }
        assertThat(spread[5]).isEqualTo(20);
    }
}
